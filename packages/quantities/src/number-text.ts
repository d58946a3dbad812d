import type { IssueCode } from './issue.ts'
import { plainText } from './plain-text.ts'
import type { Stated } from './stated.ts'

/** How numbers are written where they come from. */
export interface NumberStyle {
  /** The mark between thousands; without it a dot or a comma is the decimal mark. */
  readonly thousands?: '.' | ',' | ' ' | "'"
  /** The decimal mark where it is known; the other one is then no decimal mark. */
  readonly decimal?: '.' | ','
}

/** The figure at the start of a text, and what follows it (the unit); or what is wrong with the figure. */
export interface Figure {
  readonly stated?: Stated
  readonly wrong?: IssueCode
  /** The figure as it was typed. */
  readonly figure: string
  readonly rest: string
  /** What must be asked: whether a comma parts thousands, or what a trace is. */
  readonly doubt?: 'comma' | 'trace'
}

const NUMBER = String.raw`(?:\d+(?:[.,]\d+)*|[.,]\d+)(?:[eE][-+]?\d+)?`
const SPACED = String.raw`\d{1,3}(?:[ ']\d{3})+(?!\d)(?:[.,]\d+)?`
const ABSENT =
  /^(?:n\.?\s?d\.?|n\.?\s?n\.?|not detected|none detected|not detectable|undetectable|b\.?d\.?l\.?|below detection(?: limit)?|<\s?lo[dq]|nicht nachweisbar)(?![\p{L}\d])/iu
const TRACE = /^(?:traces?|spuren?)(?![\p{L}\d])/iu
const SIGN = String.raw`(?<sign><=|>=|[<>≤≥~]|(?:ca\.?|circa|about|approx\.?|below|under|above|over)(?=[\s\d.,]))`

const span = (number: string): RegExp =>
  new RegExp(
    `^${SIGN}?\\s*(?<low>[-+]?${number})(?:\\s*(?:-|to|bis|\\.\\.+|…)\\s*(?<high>${number}))?(?<rest>.*)$`,
    'isu',
  )
const PLAIN_SPAN = span(NUMBER)
const SPACED_SPAN = span(`(?:${SPACED}|${NUMBER})`)

/**
 * Reads a figure with whatever follows.
 *
 * @example readFigure('<0,03 mg/L') // { stated: { is: 'below', limit: 0.03 }, figure: '<0,03', rest: 'mg/L' }
 * @example readFigure('5-10') // { stated: { is: 'between', low: 5, high: 10 }, figure: '5-10', rest: '' }
 */
export function readFigure(text: string, style: NumberStyle = {}): Figure {
  const typed = plainText(text)
  if (typed === '') return { wrong: 'empty', figure: '', rest: '' }
  const absent = ABSENT.exec(typed)?.[0] ?? TRACE.exec(typed)?.[0]
  if (absent !== undefined) {
    const found = { stated: { is: 'not detected' }, figure: absent } as const
    const rest = typed.slice(absent.length).trim()
    return TRACE.test(absent) ? { ...found, rest, doubt: 'trace' } : { ...found, rest }
  }
  const spaced = style.thousands === ' ' || style.thousands === "'"
  const { sign, low = '', high, rest = typed } = (spaced ? SPACED_SPAN : PLAIN_SPAN).exec(typed)?.groups ?? {}
  const unit = rest.trim()
  const figure = typed.slice(0, typed.length - rest.length).trim()
  const stated = statedBy(sign?.toLowerCase(), low, high, style)
  // a mark, digit or sign right behind the number was meant as part of it
  if (typeof stated === 'string' || /^[\d.,'+-]/.test(unit))
    return { wrong: typeof stated === 'string' ? stated : 'not-a-number', figure, rest: unit }
  const unsure = [low, high].some((number) => number !== undefined && maybeThousands(number, style))
  return { stated, figure, rest: unit, ...(unsure && { doubt: 'comma' }) }
}

function statedBy(
  sign: string | undefined,
  low: string,
  high: string | undefined,
  style: NumberStyle,
): Stated | IssueCode {
  const first = plainNumber(low, style)
  if (first === undefined) return 'not-a-number'
  if (high === undefined) return withSign(sign, first)
  const second = plainNumber(high, style)
  if (second === undefined || sign !== undefined) return 'not-a-number'
  return second < first ? 'range-reversed' : { is: 'between', low: first, high: second }
}

function withSign(sign: string | undefined, value: number): Stated {
  if (sign === undefined) return { is: 'exact', value }
  if (['<', '<=', '≤', 'below', 'under'].includes(sign)) return { is: 'below', limit: value }
  if (['>', '>=', '≥', 'above', 'over'].includes(sign)) return { is: 'above', limit: value }
  return { is: 'about', value }
}

/** '1,310' is one and a bit to some and thirteen hundred to others; '0,035' and '1,31' are clear. */
function maybeThousands(number: string, { thousands, decimal }: NumberStyle): boolean {
  return thousands === undefined && decimal === undefined && /^[-+]?[1-9]\d{0,2},\d{3}$/.test(number)
}

/** The decimal mark where the style settles it; the mark between thousands is none. */
export function decimalMark({ thousands, decimal }: NumberStyle): '.' | ',' | undefined {
  if (thousands === '.') return ','
  return thousands === ',' ? '.' : decimal
}

function plainNumber(text: string, style: NumberStyle): number | undefined {
  const { thousands } = style
  let digits = text
  const decimal = decimalMark(style)
  if (decimal !== undefined && (thousands === '.' || thousands === ',')) {
    const whole = digits.split(decimal)[0] ?? ''
    if (whole.includes(thousands) && !/^[-+]?\d{1,3}(?:[.,]\d{3})+$/.test(whole)) return undefined
    digits = whole.replaceAll(thousands, '') + digits.slice(whole.length)
  } else if (thousands !== undefined) digits = digits.replaceAll(thousands, '')
  const marks = digits.match(/[.,]/g) ?? []
  if (marks.length > 1 || (decimal !== undefined && marks[0] !== undefined && marks[0] !== decimal))
    return undefined
  const value = Number(digits.replace(',', '.'))
  // -0 is 0
  return digits !== '' && Number.isFinite(value) ? value + 0 : undefined
}
