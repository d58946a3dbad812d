import { Temporal } from 'temporal-polyfill'

const millisecondsPerDay = 86_400_000

/**
 * Days of 86,400 s since 1970-01-01T00:00Z of a civil date at a local hour; where daylight saving
 * leaves that hour out or has it twice, the rule of the calendar standard ('compatible') decides.
 *
 * @param date      ISO date
 * @param hour      local hour, 0 to 23
 * @param timeZone  IANA zone
 */
export function modelDay(date: string, hour: number, timeZone: string): number {
  const noon = Temporal.PlainDate.from(date).toZonedDateTime({
    timeZone,
    plainTime: Temporal.PlainTime.from({ hour }),
  })
  return noon.epochMilliseconds / millisecondsPerDay
}

/** Model day of the midnight that ends a civil date. */
export function endOfDay(date: string, timeZone: string): number {
  return modelDay(Temporal.PlainDate.from(date).add({ days: 1 }).toString(), 0, timeZone)
}

/** Model day half a minute before the midnight that ends a date: all of the day is past, and it is still that day. */
export function lateOn(date: string, timeZone: string): number {
  return (Math.round(endOfDay(date, timeZone) * millisecondsPerDay) - 30_000) / millisecondsPerDay
}

/** ISO date of a model day in a zone. */
export function dateOf(day: number, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(Math.round(day * millisecondsPerDay))
    .toZonedDateTimeISO(timeZone)
    .toPlainDate()
    .toString()
}

/** True for an ISO date that the calendar has. */
export function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  // A day that the month lacks rolls over into the next; each entry is asked, so no calendar is.
  const time = Date.parse(`${text}T00:00:00Z`)
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(text)
}

/** The form of what an entry carries as its time; the day and the zone must be there as well (`isMoment`). */
export const momentForm =
  /^(\d{4}-\d{2}-\d{2})(?:T(?:[01]\d|2[0-3]):[0-5]\d(?::[0-5]\d)?[+-](?:0\d|1[0-4]):[0-5]\d\[([\w/+-]+)\])?$/

/** True for what an entry carries as its time: a date, or a date and time with its offset and an IANA zone. */
export function isMoment(text: string): boolean {
  const [, date, zone] = momentForm.exec(text) ?? []
  return date !== undefined && isDate(date) && (zone === undefined || isTimeZone(zone))
}

/** Model day of a civil date and time with offset and zone, as entries carry it. */
export function modelDayOfTime(at: string): number {
  return Temporal.ZonedDateTime.from(at, { offset: 'prefer' }).epochMilliseconds / millisecondsPerDay
}

/** Civil date and time with offset and zone, of a local time that the keeper wrote. */
export function localTime(date: string, time: string, timeZone: string): string {
  const said = [date, time, timeZone] as const
  // readings of one row have one time, and a calendar is slow
  if (lastTime === undefined || said.some((part, at) => part !== lastTime?.said[at]))
    lastTime = { said, at: findLocalTime(...said) }
  return lastTime.at
}

let lastTime: { readonly said: readonly [string, string, string]; readonly at: string } | undefined

function findLocalTime(date: string, time: string, timeZone: string): string {
  return Temporal.PlainDateTime.from(`${date}T${time}`)
    .toZonedDateTime(timeZone)
    .toString({ smallestUnit: 'minute' })
}

const zones = new Map<string, boolean>()

/** True where the runtime knows the IANA zone. */
export function isTimeZone(name: string): boolean {
  const known = zones.get(name)
  if (known !== undefined) return known
  const found = isKnownToTheRuntime(name)
  zones.set(name, found)
  return found
}

function isKnownToTheRuntime(name: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name)
    return true
  } catch {
    return false
  }
}
