import { type Grazer, objections } from '@holdfast/facts'

/** Animals that come on one day. */
export interface Step {
  /** Days from today. */
  readonly after_days: number
  readonly animals: readonly { readonly taxon: string; readonly count: number }[]
}

/** So many of a taxon come in two lots, so that the first may show whether they live. */
const inTwoLots = 4

/**
 * In what order a crew comes: who must settle ahead of another comes a step earlier, and many of one kind come
 * in two lots.
 *
 * @param apart_days  between two steps
 */
export function stepsOf(
  comers: readonly { readonly animal: Grazer; readonly count: number }[],
  apart_days: number,
): readonly Step[] {
  const rank = new Map(comers.map(({ animal }) => [animal, 0]))
  const rankOf = (animal: Grazer): number => rank.get(animal) ?? 0
  // As many passes as there are animals settle every chain of who goes before whom.
  for (const _ of comers)
    for (const { animal } of comers)
      for (const { animal: other } of comers)
        if (goesFirst(other, animal))
          rank.set(animal, Math.min(Math.max(rankOf(animal), rankOf(other) + 1), comers.length))
  const lots = comers.flatMap(({ animal, count }) => {
    const first = count >= inTwoLots ? Math.ceil(count / 2) : count
    const at = rankOf(animal)
    return [
      { at, taxon: animal.taxon, count: first },
      ...(count > first ? [{ at: at + 1, taxon: animal.taxon, count: count - first }] : []),
    ]
  })
  return [...new Set(lots.map(({ at }) => at))]
    .sort((a, b) => a - b)
    .map((at, k) => ({
      after_days: k * apart_days,
      animals: lots.filter((lot) => lot.at === at).map(({ taxon, count }) => ({ taxon, count })),
    }))
}

const goesFirst = (one: Grazer, other: Grazer): boolean =>
  one !== other &&
  objections({ animal: one }, { animal: other }).some(
    ({ rule, first }) => rule === 'order' && first === 'one',
  )
