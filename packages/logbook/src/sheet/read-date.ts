import { Temporal } from 'temporal-polyfill'

import { plain } from './read-number.ts'

export type DateOrder = 'day first' | 'month first'

interface Parts {
  readonly first: number
  readonly second: number
  readonly year: number
}

const slashed = /^(\d{1,2})[/-](\d{1,2})[/-](\d{4}|\d{2})$/
const dotted = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4}|\d{2})$/
const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/

/** The first letters that tell months apart in English, German, French, Spanish, Italian and Dutch. */
const months: readonly (readonly string[])[] = [
  ['jan', 'ene', 'gen'],
  ['feb', 'fev'],
  ['mar', 'maa', 'mrt'],
  ['apr', 'avr', 'abr'],
  ['may', 'mai', 'mag', 'mei'],
  ['jun', 'juin', 'giu'],
  ['jul', 'juil', 'lug'],
  ['aug', 'aou', 'ago'],
  ['sep', 'set'],
  ['oct', 'okt', 'ott'],
  ['nov'],
  ['dec', 'dez', 'dic'],
]
const weekday = /^(mon|tue|wed|thu|fri|sat|sun|mo|di|mi|do|fr|sa|so)[a-z]*\.?,?\s+/
const dayThenMonth = /^(\d{1,2})(?:st|nd|rd|th|er|\.)?\s+(?:de\s+)?([a-z]{3,})\.?,?\s+(?:de\s+)?(\d{4})$/
const monthThenDay = /^([a-z]{3,})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})$/

/**
 * The order of day and month of a column, judged over all of it; undefined where every date is valid
 * both ways, 'none' where no date leaves it open. Dates with dots are written day first wherever dots
 * are the custom, ISO dates are never in doubt.
 */
export function dateOrder(cells: readonly string[]): DateOrder | undefined | 'none' {
  const parts = cells.map(slashedParts).filter((one) => one !== undefined)
  if (parts.length === 0) return 'none'
  const dayFirst = parts.filter(({ first }) => first > 12).length
  const monthFirst = parts.filter(({ second }) => second > 12).length
  if (dayFirst > 0 && monthFirst === 0) return 'day first'
  if (monthFirst > 0 && dayFirst === 0) return 'month first'
  // A day that equals its month says nothing, but asks nothing either.
  return parts.every(({ first, second }) => first === second) ? 'day first' : undefined
}

/** The ISO date a cell says, or undefined where it says none. */
export function readDate(text: string, order: DateOrder): string | undefined {
  const [year, month, day] = iso.exec(text)?.slice(1).map(Number) ?? []
  if (year !== undefined) return isoDate(year, month, day)
  const dots = partsOf(dotted.exec(text))
  if (dots) return isoDate(dots.year, dots.second, dots.first)
  const parts = slashedParts(text)
  if (parts === undefined) return dateInWords(plain(text))
  const { first, second } = parts
  return order === 'day first' ? isoDate(parts.year, second, first) : isoDate(parts.year, first, second)
}

/** A time of day as HH:MM, from 24 hours or with am and pm. */
export function readTime(text: string): string | undefined {
  const [, hours, minutes, half] = /^(\d{1,2})[:.h](\d{2})(?::\d{2})?\s*(am|pm)?$/i.exec(text.trim()) ?? []
  if (hours === undefined) return undefined
  const turned =
    half === undefined ? Number(hours) : (Number(hours) % 12) + (half.toLowerCase() === 'pm' ? 12 : 0)
  if (turned > 23 || Number(minutes) > 59) return undefined
  return `${String(turned).padStart(2, '0')}:${minutes}`
}

/** True where the cell has the shape of a date, right or wrong. */
export const looksLikeDate = (text: string): boolean =>
  [iso, dotted, slashed].some((shape) => shape.test(text))

/** "7 February 2026", "7. Februar 2026", "Sat May 2, 2026"; the name of the month settles the order. */
function dateInWords(text: string): string | undefined {
  const words = text.replace(weekday, '')
  const [, day, month, year] = dayThenMonth.exec(words) ?? []
  if (day !== undefined) return isoDate(Number(year), monthNamed(month), Number(day))
  const [, named, dayAfter, yearAfter] = monthThenDay.exec(words) ?? []
  return named === undefined ? undefined : isoDate(Number(yearAfter), monthNamed(named), Number(dayAfter))
}

/** 1 to 12, or 0 where the word is no month. */
const monthNamed = (word: string): number =>
  months.findIndex((names) => names.some((name) => word.startsWith(name))) + 1

const slashedParts = (text: string): Parts | undefined => partsOf(slashed.exec(text))

function partsOf(match: RegExpExecArray | null): Parts | undefined {
  if (match === null) return undefined
  const [first, second, year] = match.slice(1).map(Number)
  // Two digits mean this century: no keeper's sheet is older.
  return { first, second, year: year < 100 ? 2000 + year : year }
}

function isoDate(year: number, month: number, day: number): string | undefined {
  try {
    return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' }).toString()
  } catch {
    return undefined
  }
}
