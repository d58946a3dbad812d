import type { Day } from '@holdfast/ecosystem'

const millisecondsPerDay = 86_400_000

/**
 * Model day of a civil date at a local hour.
 *
 * @param date      ISO date
 * @param hour      0 to 24, with a fraction
 * @param timeZone  IANA zone
 */
export function dayAt(date: string, hour: number, timeZone: string): Day {
  const asIfUtc = Date.parse(`${date}T00:00:00Z`) + hour * 3_600_000
  // The offset at the first guess may be that of the other side of a change of clocks.
  const guess = asIfUtc - offsetAt(asIfUtc, timeZone)
  return (asIfUtc - offsetAt(guess, timeZone)) / millisecondsPerDay
}

/** ISO date of a model day in a zone. */
export function dateOf(day: Day, timeZone: string): string {
  return civilTime(day * millisecondsPerDay, timeZone).slice(0, 10)
}

/** True for an ISO date that the calendar has. */
export function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const instant = Date.parse(`${text}T00:00:00Z`)
  return !Number.isNaN(instant) && new Date(instant).toISOString().slice(0, 10) === text
}

/** Local time less UTC, milliseconds. */
function offsetAt(instant: number, timeZone: string): number {
  const whole = Math.floor(instant / 1000) * 1000
  return Date.parse(`${civilTime(whole, timeZone)}Z`) - whole
}

/** 2026-03-01T08:10:00 */
function civilTime(instant: number, timeZone: string): string {
  // Swedish writes dates as ISO 8601 does.
  const style = { timeZone, dateStyle: 'short', timeStyle: 'medium' } as const
  return new Intl.DateTimeFormat('sv-SE', style).format(instant).replace(' ', 'T')
}
