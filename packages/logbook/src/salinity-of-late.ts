import type { Stored } from './entries/entry.ts'
import { dateOf } from './model-day.ts'

/** A reading that is older says little of today, days. */
const lately = 42

/**
 * Practical salinity as it was read last, in the six weeks up to a day.
 *
 * @param entries  those that stand
 * @returns undefined where it was not read, or could not be
 */
export function salinityOfLate(
  entries: readonly Stored[],
  asOf: number,
  timeZone: string,
): number | undefined {
  const since = dateOf(asOf - lately, timeZone)
  const last = entries
    .flatMap((entry) =>
      entry.kind === 'reading' && entry.body.quantity === 'salinity' && entry.at >= since ? [entry] : [],
    )
    .toSorted((a, b) => (a.at < b.at ? -1 : 1))
    .at(-1)
  return last?.body.value ?? undefined
}
