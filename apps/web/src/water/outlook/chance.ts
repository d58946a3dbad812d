import type { Day } from '@holdfast/ecosystem'
import type { Subject } from './subjects.ts'

/** A week to come, with the chance that the water is in band on a day of it. */
export interface WeekAhead {
  /** Last day before it, and its last day. */
  readonly from: Day
  readonly to: Day
  /** 0 to 1; the mean over its days. */
  readonly chance: number
}

/** Whole weeks after today; none for what has no band. */
export function weeksAhead({ fan }: Subject, asOf: Day): readonly WeekAhead[] {
  const { inBand, days } = fan
  if (!inBand) return []
  const last = days.at(-1) ?? asOf
  return Array.from({ length: Math.floor((last - asOf) / 7) }, (_, week) => {
    const [from, to] = [asOf + 7 * week, asOf + 7 * (week + 1)]
    const within = inBand.filter((_, i) => (days[i] ?? 0) > from && (days[i] ?? 0) <= to)
    return { from, to, chance: within.reduce((sum, chance) => sum + chance, 0) / within.length }
  })
}

/** Standard normal quantile at 95 %. */
const z = 1.645

/**
 * What a share seen in some tanks says of all: 90 % interval.
 *
 * @param tanks  how many of equal weight they are worth
 * @source Wilson 1927, J. Am. Stat. Assoc. 22:209-212 (from memory)
 */
export function intervalOfShare(
  share: number,
  tanks: number,
): { readonly low: number; readonly high: number } {
  const scale = 1 / (1 + (z * z) / tanks)
  const middle = scale * (share + (z * z) / (2 * tanks))
  const half = scale * z * Math.sqrt((share * (1 - share)) / tanks + (z * z) / (4 * tanks * tanks))
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) }
}
