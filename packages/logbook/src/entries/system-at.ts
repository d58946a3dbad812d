import type { System } from '@holdfast/ecosystem'

import { descriptions } from './descriptions.ts'
import type { Stored } from './entry.ts'

/**
 * The system as it was on a civil day, as far as it was known at an instant.
 *
 * @param day      ISO date in the system's zone
 * @param knownAt  ISO instant (UTC, as the store writes it); later receipts are left out
 * @returns the last description that holds from a day not after `day`, or undefined when the log does not
 *   describe the system yet. Before the first description's day nothing is known, and nothing is guessed.
 */
export function systemAt(entries: readonly Stored[], day: string, knownAt: string): System | undefined {
  const known = descriptions(entries.filter((one) => one.knownAt <= knownAt))
  return known.findLast(({ from }) => from.slice(0, 10) <= day)?.system
}

/** The IANA zone in which a date is meant. */
export type ZoneOn = (date: string) => string

/**
 * The zone of each date, by the descriptions: a system that moves has dates in the zone of the old place
 * and of the new. Dates before the first description are meant in its zone.
 *
 * @returns undefined where no entry that stands describes the system
 */
export function zoneOn(entries: readonly Stored[]): ZoneOn | undefined {
  const known = descriptions(entries).map(({ from, system }) => ({
    day: from.slice(0, 10),
    zone: system.timeZone,
  }))
  const [first] = known
  if (first === undefined) return undefined
  return (date) => (known.findLast(({ day }) => day <= date) ?? first).zone
}
