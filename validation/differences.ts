/** Differences from what most experts say that are known, meant and explained. */
import type { Check } from './case-file.ts'
import list from './differences.json' with { type: 'json' }

interface Difference {
  readonly quantity: string
  /** Keys of the check that it is limited to, such as { "process": "foam" }. */
  readonly where?: Readonly<Record<string, unknown>>
  readonly reason: string
}

/** The reason for a difference in this quantity, or undefined where none is documented. */
export function differenceFor(check: Check, differences = list as readonly Difference[]): string | undefined {
  return differences.find(
    ({ quantity, where }) =>
      quantity === check.quantity &&
      Object.entries(where ?? {}).every(
        ([key, value]) => JSON.stringify(check[key]) === JSON.stringify(value),
      ),
  )?.reason
}
