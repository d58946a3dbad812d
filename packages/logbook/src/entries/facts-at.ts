import type { BodyOf, Stored } from './entry.ts'
import { standing } from './standing.ts'

/** The keeper's own value of a fact, in the place of the catalogue's. */
export type OwnFact = Pick<
  BodyOf<'fact-override'>,
  'fact' | 'low' | 'typical' | 'high' | 'unit' | 'reason' | 'source'
>

/**
 * The facts of which the keeper has values of their own on a civil day, as far as they were known at an
 * instant, by their ids. Of each the last told for a day not after `day` holds, of one day the later
 * received; for a fact that is not there the catalogue holds.
 *
 * @param day      ISO date in the system's zone
 * @param knownAt  ISO instant (UTC, as the store writes it); later receipts are left out
 */
export function factsAt(
  entries: readonly Stored[],
  day: string,
  knownAt: string,
): ReadonlyMap<string, OwnFact> {
  const found = new Map<string, { readonly from: string; readonly own: OwnFact }>()
  for (const entry of standing(entries.filter((one) => one.knownAt <= knownAt))) {
    if (entry.kind !== 'fact-override' || entry.at.slice(0, 10) > day) continue
    const { fact, low, typical, high, unit, reason, source } = entry.body
    const before = found.get(fact)
    if (before !== undefined && before.from > entry.at) continue
    const own = { fact, low, typical, high, unit, reason, ...(source !== undefined && { source }) }
    found.set(fact, { from: entry.at, own })
  }
  return new Map([...found].map(([id, { own }]) => [id, own]))
}
