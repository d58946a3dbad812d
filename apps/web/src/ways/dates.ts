import { ways } from './ways.ts'

/** Languages whose order of day, month and year is the one chosen; the words are English in each. */
const languages = { 'day first': 'en-GB', 'month first': 'en-US', 'year first': 'en-CA' } as const

/** Each is made once: to make one takes far longer than to write a date with it. */
const made = new Map<string, Intl.DateTimeFormat>()

/** Writes dates in the order that the keeper chose. */
export function dateFormat(options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const language = languages[ways().dates]
  const key = JSON.stringify([language, options])
  const format = made.get(key) ?? new Intl.DateTimeFormat(language, options)
  made.set(key, format)
  return format
}

const midnight = (date: string) => new Date(`${date}T00:00Z`)
const isYearFirst = () => ways().dates === 'year first'

/** @param date  ISO date @example dayInWords('2026-03-01') // 'Sunday, 1 March 2026' */
export const dayInWords = (date: string): string =>
  isYearFirst()
    ? `${dateFormat({ weekday: 'long', timeZone: 'UTC' }).format(midnight(date))}, ${date}`
    : dateFormat({ dateStyle: 'full', timeZone: 'UTC' }).format(midnight(date))

/** @param date  ISO date @example dayInShort('2026-03-01') // '1 Mar 2026' */
export const dayInShort = (date: string): string =>
  isYearFirst() ? date : dateFormat({ dateStyle: 'medium', timeZone: 'UTC' }).format(midnight(date))

/** @param first  ISO date, as `last` @example daysInWords('2026-04-06', '2026-04-30') // '6–30 Apr 2026' */
export const daysInWords = (first: string, last: string): string =>
  isYearFirst()
    ? `${first} to ${last}`
    : dateFormat({ dateStyle: 'medium', timeZone: 'UTC' }).formatRange(midnight(first), midnight(last))

/** @example momentInWords('2026-03-01T07:10:00Z', 'Europe/Berlin') // '1 Mar 2026, 08:10' */
export const momentInWords = (instant: string, timeZone: string): string =>
  dateFormat({ dateStyle: 'medium', timeStyle: 'short', timeZone, hourCycle: 'h23' }).format(
    new Date(instant),
  )
