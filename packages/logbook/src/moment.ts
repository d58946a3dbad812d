import { Temporal } from 'temporal-polyfill'

import type { BlankQuestion } from './entries/fill-in.ts'
import type { Issue } from './issue.ts'
import { isDate } from './model-day.ts'

/** When something was so, as an entry carries it. */
export interface Moment {
  readonly at: string
  readonly precision: 'day' | 'minute'
}

/** A moment, or what is wrong with it, or what must be asked; options are what to write instead. */
export type MomentRead =
  | ({ readonly ok: true } & Moment)
  | { readonly ok: false; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly question: Omit<BlankQuestion, 'blank'> }

/** The minute that an instant is in a zone. */
export function momentAt(instant: Date, timeZone: string): Moment {
  const zoned = Temporal.Instant.fromEpochMilliseconds(instant.getTime()).toZonedDateTimeISO(timeZone)
  return { at: zoned.toString({ smallestUnit: 'minute' }), precision: 'minute' }
}

const accepted =
  'A date such as 2026-03-01, or a date with a time such as 2026-03-01T08:10 or 2026-03-01 08:10.'

/**
 * Reads when something was so: a date, or a date and a time of the day, in the zone of the system. A time
 * that the clocks leave out is an issue, one that they show twice a question; with its offset it is clear.
 *
 * @param timeZone  IANA zone in which the time is meant
 * @example readMoment('2026-03-01 08:10', 'Europe/Berlin') // 2026-03-01T08:10+01:00[Europe/Berlin]
 * @example readMoment('2026-10-25T02:30', 'Europe/Berlin') // asks: before the clocks went back, or after?
 */
export function readMoment(text: string, timeZone: string): MomentRead {
  const found =
    /^(?<date>\d{4}-\d{2}-\d{2})(?:[T ](?<time>\d{1,2}:\d{2})(?::\d{2})?(?<offset>[+-]\d{2}:\d{2})?)?$/
  const { date, time, offset } = found.exec(text.trim())?.groups ?? {}
  if (date === undefined || !isDate(date))
    return wrong('no-moment', `"${text.trim()}" is no date of the calendar`)
  if (time === undefined) return { ok: true, at: date, precision: 'day' }
  const padded = time.padStart(5, '0')
  if (!/^(?:[01]\d|2[0-3]):[0-5]\d$/.test(padded)) return wrong('no-time', `"${time}" is no time of a day`)
  const local = Temporal.PlainDateTime.from(`${date}T${padded}`)
  const [earlier, later] = (['earlier', 'later'] as const).map((disambiguation) =>
    local.toZonedDateTime(timeZone, { disambiguation }),
  )
  if (!earlier.toPlainDateTime().equals(local)) {
    const got = `there was no ${padded} on ${date} in ${timeZone}: the clocks were put on`
    return wrong('left-out-hour', got)
  }
  const readings = earlier.equals(later) ? [earlier] : [earlier, later]
  const fitting = readings.filter((one) => offset === undefined || one.offset === offset)
  const [only, other] = fitting
  if (only === undefined)
    return wrong('wrong-offset', `in ${timeZone} the clocks did not stand at ${offset} then`)
  if (other === undefined)
    return { ok: true, at: only.toString({ smallestUnit: 'minute' }), precision: 'minute' }
  const options = readings.map((one, place) => ({
    value: `${date}T${padded}${one.offset}`,
    words: place === 0 ? 'before the clocks were put back' : 'after the clocks were put back',
  }))
  return {
    ok: false,
    question: { question: `Time: ${padded} came twice on ${date}. Which of the two?`, options },
  }
}

function wrong(code: string, got: string): MomentRead {
  return {
    ok: false,
    issues: [{ code, where: 'Time', got, accepted, next: 'Give the date alone if the time is not known.' }],
  }
}
