import { rationSetting } from '../processes/feeding.ts'
import { foamFactorSetting } from '../processes/foam-fractionation.ts'
import type { System } from '../system.ts'
import type { Moment, TimelineQuestion } from './moment.ts'

export function levers({ system, change }: TimelineQuestion): readonly Moment[] {
  if (!change) return []
  const moments: Moment[] = []
  if (change.feedFactor !== undefined)
    moments.push({ day: change.from, set: scaled(system, change.feedFactor) })
  if (change.foamFactor !== undefined)
    moments.push({ day: change.from, set: { [foamFactorSetting]: change.foamFactor } })
  return moments
}

const scaled = (system: System, factor: number): Readonly<Record<string, number>> =>
  Object.fromEntries(system.feeds.map((_, index) => [`*${rationSetting(index)}`, factor]))
