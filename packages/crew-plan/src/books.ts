import { type Atom, border, type Ledger, type LedgerRow } from '@holdfast/ecosystem'
import { type FactsOfSystem, feedKind } from '@holdfast/facts'
import { molarMass } from '@holdfast/quantities'
import type { BookLine, ToFeed } from './answer.ts'

/** What a crew moves inside the system, by the words of its lines. */
const inside: Readonly<Record<string, (row: LedgerRow) => boolean>> = {
  'algae eaten': ({ process }) => process === 'grazing',
  'of it back into the water': ({ process, to }) =>
    process === 'grazing' && (to === 'water.ammonia' || to === 'water.phosphate'),
  'of it as droppings': ({ process, to }) => process === 'grazing' && to === 'water.particles',
}

/** What clips hold for grazers, by the word that keepers have for it. */
const dried = 'seaweed'

/** The lines of a year's books in one world, mg a day by the stream and atom, as `bookLines` has them. */
export function yearOf(ledger: Ledger, atom: Atom): ReadonlyMap<string, number> {
  const perDay = molarMass(atom) / 1000 / (ledger.to - ledger.from)
  const { inputs, exports, stored } = border(ledger, atom)
  const rows = ledger.rows.filter((row) => row.atom === atom)
  const named = Object.entries(inside).map(
    ([stream, holds]) =>
      [stream, rows.filter(holds).reduce((sum, { amount_umol }) => sum + amount_umol, 0)] as const,
  )
  return new Map(
    [
      ...named,
      ...[...inputs].map(([name, amount]) => [`in: ${plain(name)}`, amount] as const),
      ...[...exports].map(([name, amount]) => [`out: ${plain(name)}`, amount] as const),
      ['more inside at the end', stored] as const,
    ].map(([stream, amount]) => [stream, amount * perDay]),
  )
}

const plain = (name: string): string => name.replaceAll('_', ' ')

/** The books of a year with a plan beside those without it; what the hand feeds comes on top, for the trial does not have it. */
export function bookLines(
  withPlan: Books,
  without: Books,
  toFeed: readonly ToFeed[],
  facts: FactsOfSystem,
): readonly BookLine[] {
  const known = [withPlan, without].flatMap(({ N, P }) => [...N.keys(), ...P.keys()])
  const streams = [...new Set(known)].sort((a, b) => rank(a) - rank(b))
  const lines = streams.map((stream): BookLine => {
    const of = ({ N, P }: Books) => ({ N_mg_day: N.get(stream) ?? 0, P_mg_day: P.get(stream) ?? 0 })
    return { stream, ...of(withPlan), without: of(without) }
  })
  const fed_g_day = toFeed.reduce((sum, { g_week }) => sum + g_week / 7, 0)
  const feed = feedKind(dried)
  if (fed_g_day === 0 || feed === undefined) return lines
  const dry = 1 - (feed.moisture === undefined ? 0 : facts.typical(feed.moisture))
  const mg = (content: string): number => (1000 * fed_g_day * facts.typical(content)) / dry
  const fed = { N_mg_day: mg(feed.N), P_mg_day: mg(feed.P) }
  return [
    ...lines,
    { stream: 'in: fed by your hand, at most', ...fed, without: { N_mg_day: 0, P_mg_day: 0 } },
  ]
}

/** What moves inside first, then what comes in, what goes out, and what stays. */
const rank = (stream: string): number =>
  stream in inside ? 0 : ['in: ', 'out: ', ''].findIndex((start) => stream.startsWith(start)) + 1

/** Of both atoms, medians over the worlds. */
export interface Books {
  readonly N: ReadonlyMap<string, number>
  readonly P: ReadonlyMap<string, number>
}
