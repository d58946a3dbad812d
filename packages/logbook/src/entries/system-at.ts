import type { System } from '@holdfast/ecosystem'

import type { Stored } from './entry.ts'
import { standing } from './standing.ts'

/**
 * The system as it was on a civil day, as far as it was known at an instant.
 *
 * @param day      ISO date in the system's zone
 * @param knownAt  ISO instant (UTC, as the store writes it); later receipts are left out
 * @returns the description with the latest day not after `day` (of one day: the later received), or
 *   undefined when the log does not describe the system yet. Before the first description's day
 *   nothing is known, and nothing is guessed.
 */
export function systemAt(entries: readonly Stored[], day: string, knownAt: string): System | undefined {
  let found: { readonly day: string; readonly system: System } | undefined
  for (const entry of standing(entries.filter((one) => one.knownAt <= knownAt))) {
    if (entry.kind !== 'system') continue
    const from = entry.at.slice(0, 10)
    if (from <= day && (found === undefined || from >= found.day))
      found = { day: from, system: entry.body.system }
  }
  return found?.system
}
