import { memo } from '../memo.ts'
import { monthNamed } from '../words/months.ts'
import { plain } from '../words/plain.ts'
import { weekdayNamed } from './weekdays.ts'

/** What the text of a date says; the rest comes from the sheet around it. */
export interface DateText {
  readonly year?: number
  readonly month?: number
  readonly day?: number
  /** Two numbers of which one is the day and one the month. */
  readonly either?: readonly [number, number]
  readonly time?: string
  /** Monday is 1. */
  readonly weekday?: number
}

const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/
const compact = /^((?:19|20)\d{2})(\d{2})(\d{2})$/
const dotted = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4}|\d{2})?$/
const slashed = /^(\d{1,2})([/-])(\d{1,2})(?:\2(\d{4}|\d{2}))?$/
const atEnd =
  /[T,\s]+(?:at |um |a las |alle |om |a )?(\d{1,2})(?:[:.h](\d{2}))(?::\d{2}(?:\.\d+)?)?\s*([ap]\.?m\.?)?\s*(?:uhr|h|z|[+-]\d{2}:?\d{2})?$/i
const little = new Set(['de', 'del', 'of', 'the', 'le', 'el', 'il', 'den', 'der', 'van', 'd', 'um'])

/** Reads the text of a date cell; undefined where it is no date. A date that no calendar has is still read. */
export const parseDate = memo(readDate)

function readDate(written: string): DateText | undefined {
  const text = written.trim().replace(/^'/, '')
  if (text.length > 60 || !/\d/.test(text)) return undefined
  const timed = atEnd.exec(text)
  const time = timed === null ? undefined : clock(timed[1], timed[2], timed[3])
  const before = timed === null || time === undefined ? text : text.slice(0, timed.index)
  // 'Mar 20' is the 20th of March, and no Tuesday in Spain: a month comes before a day of the week
  const plainly = inNumbers(before.trim()) ?? inWords(before)
  const { weekday, rest } = plainly === undefined ? withoutWeekday(before) : { rest: before }
  const found = plainly ?? inNumbers(rest) ?? inWords(rest)
  if (found === undefined) return undefined
  return { ...found, ...(time !== undefined && { time }), ...(weekday !== undefined && { weekday }) }
}

function withoutWeekday(text: string): { readonly weekday?: number; readonly rest: string } {
  const [whole = '', word = ''] = /^\(?(\p{L}{2,11})\.?,?\)?\s+(?=\S)/u.exec(text) ?? []
  const weekday = weekdayNamed(word)
  if (weekday !== undefined) return { weekday, rest: text.slice(whole.length).trim() }
  const [behind = '', last = ''] = /[\s,(]+(\p{L}{2,11})\.?\)?$/u.exec(text) ?? []
  const after = weekdayNamed(last)
  return after === undefined
    ? { rest: text.trim() }
    : { weekday: after, rest: text.slice(0, -behind.length).trim() }
}

function inNumbers(text: string): DateText | undefined {
  const [, year, month, day] = iso.exec(text) ?? compact.exec(text) ?? []
  if (year !== undefined) return { year: Number(year), month: Number(month), day: Number(day) }
  const dots = dotted.exec(text)
  if (dots) return { day: Number(dots[1]), month: Number(dots[2]), ...yearIn(dots[3]) }
  const slashes = slashed.exec(text)
  if (slashes) return { either: [Number(slashes[1]), Number(slashes[3])], ...yearIn(slashes[4]) }
  return undefined
}

/** Two digits mean this century: no keeper's sheet is older. */
function yearIn(digits: string | undefined): Pick<DateText, 'year'> {
  if (digits === undefined) return {}
  const year = Number(digits)
  return { year: year < 100 ? 2000 + year : year }
}

/** "7 February 2026", "7. Februar", "Mar-03-26", "3 de marzo de 2026": the name of the month settles the order. */
function inWords(text: string): DateText | undefined {
  const words = plain(text)
    .split(/[\s,./'-]+/)
    .filter((word) => word !== '' && !little.has(word))
  const at = words.findIndex((word) => monthNamed(word) !== undefined)
  const month = monthNamed(words[at] ?? '')
  const numbers = words.filter((_, place) => place !== at)
  if (month === undefined || numbers.length === 0 || numbers.length > 2) return undefined
  const figures = numbers.map((word) => /^(\d{1,2}|\d{4})(?:st|nd|rd|th|er|e|o|a|º|ª|°)?$/.exec(word)?.[1])
  if (figures.some((figure) => figure === undefined)) return undefined
  const [first = '', second] = figures
  if (first.length === 4) return { year: Number(first), month, ...(second && { day: Number(second) }) }
  if (second === undefined) return { month, day: Number(first) }
  return { month, day: Number(first), ...yearIn(second) }
}

/** A time of day as HH:MM. */
function clock(hours = '', minutes = '00', half?: string): string | undefined {
  const isAfternoon = half?.toLowerCase().startsWith('p')
  const hour = half === undefined ? Number(hours) : (Number(hours) % 12) + (isAfternoon ? 12 : 0)
  if (hour > 23 || Number(minutes) > 59) return undefined
  return `${String(hour).padStart(2, '0')}:${minutes}`
}

/** What a cell of a column of times says: HH:MM, or the half of the day. */
export const parseTime = memo(readTime)

function readTime(text: string): { readonly time?: string; readonly half?: 'am' | 'pm' } | undefined {
  const said = plain(text)
  const [, hours, minutes, half] =
    /^(\d{1,2})(?:[:.h](\d{2}))?(?::\d{2})?\s*([ap]\.?m\.?|uhr|h)?$/.exec(said) ?? []
  if (hours !== undefined && (minutes !== undefined || half !== undefined)) {
    const time = clock(hours, minutes, /^[ap]/.test(half ?? '') ? half : undefined)
    return time === undefined ? undefined : { time }
  }
  const half2 = halfOfDay(said)
  return half2 === undefined ? undefined : { half: half2 }
}

/** Morning or evening by a word, or undefined. */
export function halfOfDay(word: string): 'am' | 'pm' | undefined {
  const said = plain(word).replaceAll('.', '')
  if (
    /^(?:am|morning|in the morning|morgens|morgen|fruh|vormittags?|matin|manana|mattina|mattino|ochtend|'s ochtends)$/.test(
      said,
    )
  )
    return 'am'
  const isLate =
    /^(?:pm|evening|in the evening|abends?|nachmittags?|afternoon|night|soir|apres-midi|tarde|noche|sera|pomeriggio|avond|'s avonds|middag)$/
  return isLate.test(said) ? 'pm' : undefined
}
