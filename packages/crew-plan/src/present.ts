import { timeline } from '@holdfast/ecosystem'
import type { Member, OutlookQuestion, Past } from '@holdfast/inference'
import type { Present } from './question.ts'

/** So many worlds stand for a whole ensemble: a plan needs its middle, not its ends. */
const fewWorlds = 5

/**
 * Today, as an ensemble weighed by the log has it: a few members that carry its weight, by systematic resampling
 * (Kitagawa 1996, J. Comput. Graph. Stat. 5:1, as recalled).
 */
export function presentOfPast(
  { model, members, weights }: Past,
  question: OutlookQuestion,
  few = fewWorlds,
): Present {
  const worlds = Array.from({ length: Math.min(few, members.length) }, (_, at) =>
    memberAt(members, weights.of, (at + 0.5) / Math.min(few, members.length)),
  )
  const { asOf } = question
  return {
    model,
    day: asOf,
    worlds,
    weights: worlds.map(() => 1 / worlds.length),
    routine: (to) => timeline({ ...question, system: model.system, facts: model.facts, from: asOf, to }),
  }
}

function memberAt(members: readonly Member[], weights: readonly number[], share: number): Member {
  let left = share
  for (const [m, member] of members.entries()) {
    left -= weights[m]
    if (left <= 0) return member
  }
  return members[members.length - 1]
}
