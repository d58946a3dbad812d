import { exp, ln } from '@holdfast/elementary'
import type { Trait } from '@holdfast/facts'
import type { Answers, Chance, Key } from './key.ts'

/** Sister traits count together as so many answers at most, for they say nearly the same. */
const sistersCountAs = 1.5

/** No kind is said to be surer than this: the tables are judgments. */
export const surest = 0.98

/**
 * The chance of every kind, by Bayes, the likeliest first.
 *
 * @param answers  traits in any order; what the key does not ask is passed over
 */
export function posterior(key: Key, answers: Answers): readonly Chance[] {
  const counted = key.traits.filter(
    (one) => answers[one.key] !== undefined && !key.inFrequency.includes(one.key),
  )
  const weights = counted.map((one) => weightAmong(counted, one))
  const logs = key.kinds.map(({ key: kind }) =>
    counted.reduce(
      (sum, one, i) => sum + weights[i] * ln(key.chance(kind, one.key, answers[one.key])),
      ln(key.frequency(kind, answers)),
    ),
  )
  const greatest = Math.max(...logs)
  const shares = logs.map((log) => exp(log - greatest))
  const total = shares.reduce((sum, share) => sum + share, 0)
  return capped(
    key.kinds
      .map((kind, i) => ({ ...kind, chance: shares[i] / total }))
      .sort((a, b) => b.chance - a.chance || (a.key < b.key ? -1 : 1)),
  )
}

/** 1 for a trait that stands alone; sisters share what they count as. */
function weightAmong(counted: readonly Trait[], { sisters }: Trait): number {
  if (sisters === undefined) return 1
  const many = counted.filter((other) => other.sisters === sisters).length
  return Math.min(1, sistersCountAs / many)
}

/** The first at the cap at most; what is taken from it goes to the others, in proportion. */
function capped(chances: readonly Chance[]): readonly Chance[] {
  const [first, ...others] = chances
  if (first === undefined || first.chance <= surest) return chances
  const rest = others.reduce((sum, { chance }) => sum + chance, 0)
  const share = ({ chance }: Chance) => (rest > 0 ? chance / rest : 1 / others.length)
  return [
    { ...first, chance: surest },
    ...others.map((one) => ({ ...one, chance: (1 - surest) * share(one) })),
  ]
}
