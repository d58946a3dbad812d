import { carbonChanges, carbonDoses, filterChanges } from './equipment-routine.ts'
import { darkBeds, harvests } from './harvests.ts'
import { levers } from './levers.ts'
import { momentsOf } from './logged.ts'
import type { Moment, TimelineQuestion } from './moment.ts'
import { mediaRoutine, skimmerBreaks } from './routine.ts'
import { waterChanges } from './water-changes.ts'

/** All moments of a span in order: what the log says, what the routine says, what levers change. */
export function timeline(question: TimelineQuestion): readonly Moment[] {
  const moments = [
    ...waterChanges(question),
    ...skimmerBreaks(question.system),
    ...mediaRoutine(question),
    ...filterChanges(question),
    ...carbonChanges(question),
    ...carbonDoses(question),
    ...harvests(question),
    ...darkBeds(question),
    ...question.events.flatMap((event) => momentsOf(event, question.system, question.facts)),
    ...levers(question),
  ]
  return moments.filter(({ day }) => day >= question.from && day < question.to).sort((a, b) => a.day - b.day)
}
