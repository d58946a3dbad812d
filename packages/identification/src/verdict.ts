import { bestResponse, type Weighed } from './cost.ts'
import { harmsOpen } from './harms-open.ts'
import type { Answers, Chance, Key } from './key.ts'
import { type Worthwhile, worthwhile } from './next-question.ts'
import { posterior } from './posterior.ts'
import { effortOf, worthOf } from './worth.ts'

/** The measures agree where the best response is expected to cost so little, in months lost. */
const agreedAt = 0.06

/**
 * How far a key has come: it asks on, the measures agree, or it is open and no question is worth its effort.
 */
export interface Verdict {
  /** The likeliest kind first. */
  readonly chances: readonly Chance[]
  readonly best: Weighed
  readonly ends: 'not yet' | 'agreed' | 'open'
  /** The most worth first; empty where it ends. */
  readonly questions: readonly Worthwhile[]
  /** Unlikely by the table, yet something that was noted speaks for it, and it would harm. */
  readonly suspect?: Chance
}

/** Weighs the answers by one key. */
export function verdictOf(key: Key, answers: Answers, passedOver: readonly string[]): Verdict {
  const chances = posterior(key, answers)
  const best = bestResponse(key, chances)
  const harms = harmsOpen(key, answers, chances, passedOver, best.response)
  const suspect = harms.find(({ spoken }) => spoken)?.suspect
  const agreed = best.cost <= agreedAt
  const owed = harms.flatMap(({ look }) => (look === undefined ? [] : [look]))
  if (agreed && owed.length === 0 && suspect === undefined)
    return { chances, best, ends: 'agreed', questions: [] }
  const worth = agreed ? [] : worthwhile(key, answers, chances, passedOver)
  // What is owed is asked when the key would end, whatever it is worth by the table; and at once where something
  // that was noted speaks for the harm.
  const isOwed = owed.length > 0 && (worth.length === 0 || suspect !== undefined)
  const questions: readonly Worthwhile[] = isOwed
    ? owed.map((trait) => ({ trait, worth: worthOf(key, answers, chances, trait) / effortOf(trait) }))
    : worth
  return {
    chances,
    best,
    ends: questions.length > 0 ? 'not yet' : 'open',
    questions,
    ...(suspect && { suspect }),
  }
}
