import { Temporal } from 'temporal-polyfill'

/** When it was so: now, or a civil date with or without a time, in the zone of the system. */
export type When = 'now' | { readonly date: string; readonly time: string }

/** A moment as an entry says it. */
export interface Moment {
  readonly at: string
  readonly precision: 'day' | 'minute'
}

/**
 * @param when      `time` empty: the day alone is known
 * @param timeZone  IANA zone of the system
 * @returns undefined where there is no such date or time
 */
export function momentOf(when: When, timeZone: string, now: Date): Moment | undefined {
  const minute = (zoned: Temporal.ZonedDateTime): Moment => ({
    at: zoned.toString({ smallestUnit: 'minute' }),
    precision: 'minute',
  })
  if (when === 'now')
    return minute(Temporal.Instant.fromEpochMilliseconds(now.getTime()).toZonedDateTimeISO(timeZone))
  try {
    const date = Temporal.PlainDate.from(when.date, { overflow: 'reject' })
    if (when.time === '') return { at: date.toString(), precision: 'day' }
    return minute(date.toZonedDateTime({ timeZone, plainTime: Temporal.PlainTime.from(when.time) }))
  } catch {
    return undefined
  }
}

/** The date and time that stand in an entry. */
export const whenOf = ({ at, precision }: Moment): When => ({
  date: at.slice(0, 10),
  time: precision === 'minute' ? at.slice(11, 16) : '',
})

/** Today in the zone of the system, as a date. */
export const today = (timeZone: string, now: Date): string =>
  Temporal.Instant.fromEpochMilliseconds(now.getTime()).toZonedDateTimeISO(timeZone).toPlainDate().toString()
