import { type Fact, factsHolding, familyOf, type Provenance } from '@holdfast/facts'

export type Order = 'by family' | 'least sure first'

/** What is looked for. */
export interface Wanted {
  readonly words: string
  /** Empty: all of them. */
  readonly family: string
  readonly order: Order
}

/** The facts in use that hold every word, in the order wanted. */
export function found({ words, family, order }: Wanted): readonly Fact[] {
  const those = factsHolding(words).filter(({ id }) => family === '' || familyOf(id) === family)
  return those.toSorted(order === 'by family' ? byFamily : leastSure)
}

/** The families that have facts, in the order of the alphabet. */
export const familiesThere: readonly string[] = [
  ...new Set(factsHolding('').map(({ id }) => familyOf(id))),
].sort()

const byFamily = (a: Fact, b: Fact): number => {
  const [one, other] = [familyOf(a.id), familyOf(b.id)]
  return one === other ? 0 : one < other ? -1 : 1
}

/** From what was made here to what was read. */
const sureness: Readonly<Record<Provenance, number>> = {
  estimate: 0,
  'common practice': 1,
  memory: 2,
  read: 3,
}

/** What no formula reads leaves nothing open, and stands behind what one does. */
const leastSure = (a: Fact, b: Fact): number =>
  Number(a.aside !== undefined) - Number(b.aside !== undefined) ||
  sureness[a.provenance] - sureness[b.provenance] ||
  compare(width(b), width(a))

/** How often the low end goes into the high one; a band that reaches zero is the widest there is. */
export const width = ({ low, high }: Pick<Fact, 'low' | 'high'>): number =>
  low === high ? 1 : low <= 0 ? Number.POSITIVE_INFINITY : high / low

const compare = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1)
