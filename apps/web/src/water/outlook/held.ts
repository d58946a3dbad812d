import type { OutlookAnswer } from '../../worker/answers.ts'

/** An answer with the hash of the inputs it was worked out from. */
export interface Held {
  readonly answer: OutlookAnswer
  readonly hash: string
}

/**
 * Keeps the latest answer and that to today's husbandry. A rough answer never takes the place of a whole
 * one to the same inputs.
 */
export function keep(before: readonly Held[], next: Held, todayHash: string): readonly Held[] {
  const same = best(before, next.hash)
  const better = same && same.answer.outlook.members > next.answer.outlook.members ? same : next
  const today = next.hash === todayHash ? undefined : best(before, todayHash)
  return today ? [today, better] : [better]
}

export const best = (held: readonly Held[], hash: string): Held | undefined =>
  held.find((candidate) => candidate.hash === hash)
