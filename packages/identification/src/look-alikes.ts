import type { Answers, Chance, Key } from './key.ts'

/** A kind that the likeliest one is taken for, and the test that parts the two. */
export interface SetApart {
  readonly from: Chance
  readonly test: string
  /** True where the test touches what may be slime: it waits. */
  readonly waits: boolean
  /** Traits that part them, the best first. */
  readonly traits: readonly string[]
  /** True where one of them was noted already. */
  readonly looked: boolean
}

/** Kinds less likely than this are not worth a test. */
const leastLikely = 0.01

/** The look-alikes of the likeliest kind that are still possible, the likeliest first. */
export function setApart(
  { lookAlikes }: Key,
  chances: readonly Chance[],
  answers: Answers,
  slime: boolean,
): readonly SetApart[] {
  const first = chances[0]?.key
  return chances.slice(1).flatMap((from) => {
    if (from.chance < leastLikely) return []
    return lookAlikes
      .filter(({ pair }) => pair.includes(from.key) && first !== undefined && pair.includes(first))
      .map(({ test, touches, traits }) => ({
        from,
        test,
        traits,
        waits: touches && slime,
        looked: traits.some((trait) => answers[trait] !== undefined),
      }))
  })
}
