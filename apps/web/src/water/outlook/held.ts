import type { OutlookAnswer } from '../../worker/answers.ts'

/** An answer with the hash of the inputs it was worked out from. */
export interface Held {
  readonly answer: OutlookAnswer
  readonly hash: string
}

/**
 * Keeps the latest answer and those that are still wanted. A rough answer never takes the place of a whole one
 * to the same inputs.
 */
export function keep(before: readonly Held[], next: Held, wanted: readonly string[]): readonly Held[] {
  const same = best(before, next.hash)
  const better = same && same.answer.outlook.members > next.answer.outlook.members ? same : next
  return [...before.filter(({ hash }) => hash !== next.hash && wanted.includes(hash)), better]
}

export const best = (held: readonly Held[], hash: string): Held | undefined =>
  held.find((candidate) => candidate.hash === hash)

/** What is wanted, and by how many members. */
export interface Wanted {
  readonly hash: string
  readonly members: number
}

/**
 * What to ask next: a first answer to today's husbandry, one to the levers as they stand, then the whole of
 * these and of the variants that are kept.
 *
 * @param wanted  today's husbandry, the levers, and the variants, in this order
 */
export function nextToAsk<Of extends Wanted>(held: readonly Held[], wanted: readonly Of[]): Of | undefined {
  const membersOf = ({ hash }: Of) => best(held, hash)?.answer.outlook.members ?? 0
  const [today, levers, ...kept] = wanted
  const first = [today, levers].find((one) => one !== undefined && membersOf(one) === 0)
  return (
    first ??
    [levers, today, ...kept].find((one): one is Of => one !== undefined && membersOf(one) < one.members)
  )
}
