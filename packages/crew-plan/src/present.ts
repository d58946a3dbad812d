import { timeline } from '@holdfast/ecosystem'
import { type OutlookQuestion, type Past, resampled } from '@holdfast/inference'
import type { Present } from './question.ts'

/** So many worlds stand for a whole ensemble: a plan needs its middle, not its ends. */
const fewWorlds = 5
/** A reading older than this says little of whether an animal may come today, d. */
const recentDays = 14

/** Today, as an ensemble weighed by the log has it: a few members that carry its weight, or all where they are no more. */
export function presentOfPast(known: Past, question: OutlookQuestion, few = fewWorlds): Present {
  const { model, members, weights } = resampled(known, few)
  const { asOf } = question
  return {
    model,
    day: asOf,
    worlds: members,
    weights: weights.of,
    routine: (to) => timeline({ ...question, system: model.system, facts: model.facts, from: asOf, to }),
    read: { ...lastRead('ammonia', question), ...lastRead('nitrite', question) },
  }
}

function lastRead(of: 'ammonia' | 'nitrite', { observations, asOf }: OutlookQuestion): Present['read'] {
  const last = observations
    .filter(({ quantity, day }) => quantity === of && day <= asOf && day > asOf - recentDays)
    .toSorted((a, b) => a.day - b.day)
    .at(-1)
  return last === undefined || last.belowDetection ? {} : { [of]: last.value }
}
