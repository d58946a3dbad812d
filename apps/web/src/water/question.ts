import type { Levers, OutlookQuestion } from '@holdfast/inference'
import type { SystemData } from '../shell/system-data.ts'
import type { Span } from '../worker/answers.ts'

/** Eight weeks: as far as a routine of husbandry is planned. */
const horizonDays = 56
const wholeEnsemble = 60
/** Few enough to keep up with a finger. */
export const firstMembers = 16
/** A ledger runs through each day of its span again: of a long one fewer members come first. */
export const firstMembersOver = ({ from, to }: Span) =>
  Math.max(4, Math.min(firstMembers, Math.round((firstMembers * 120) / (to - from))))
/** One seed for all, so that two levers differ by the lever and not by chance. */
const seed = 1

export function questionOf(data: SystemData, levers?: Levers): OutlookQuestion {
  const { system, observations, events, ownFacts, from, asOf } = data
  return {
    system,
    observations,
    events,
    ownFacts,
    from,
    asOf,
    horizonDays,
    members: wholeEnsemble,
    seed,
    ...(levers ? { levers } : {}),
  }
}
