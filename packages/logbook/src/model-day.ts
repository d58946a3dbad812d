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
  try {
    Temporal.PlainDate.from(text, { overflow: 'reject' })
    return true
  } catch {
    return false
  }
}

/** Model day of a civil date and time with offset and zone, as entries carry it. */
export function modelDayOfTime(at: string): number {
  return Temporal.ZonedDateTime.from(at, { offset: 'prefer' }).epochMilliseconds / millisecondsPerDay
}

/** Civil date and time with offset and zone, of a local time that the keeper wrote. */
export function localTime(date: string, time: string, timeZone: string): string {
  return Temporal.PlainDateTime.from(`${date}T${time}`)
    .toZonedDateTime(timeZone)
    .toString({ smallestUnit: 'minute' })
}

/** True where the runtime knows the IANA zone. */
export function isTimeZone(name: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name)
    return true
  } catch {
    return false
  }
}
