import { carbonFactorSetting } from '../processes/carbon-dosing.ts'
import { rationSetting } from '../processes/feeding.ts'
import { foamFactorSetting } from '../processes/foam-fractionation.ts'
import type { System } from '../system.ts'
import type { Moment, TimelineQuestion, Values } from './moment.ts'

export function levers({ system, change }: TimelineQuestion): readonly Moment[] {
  if (!change) return []
  const moments: Moment[] = []
  if (change.feedFactor !== undefined)
    moments.push({ day: change.from, multiply: allFeeds(system, change.feedFactor) })
  if (change.foamFactor !== undefined)
    moments.push({ day: change.from, set: { [foamFactorSetting]: change.foamFactor } })
  if (change.carbonFactor !== undefined)
    moments.push({ day: change.from, set: { [carbonFactorSetting]: change.carbonFactor } })
  return moments
}

const allFeeds = (system: System, factor: number): Values =>
  Object.fromEntries(system.feeds.map((_, index) => [rationSetting(index), factor]))
