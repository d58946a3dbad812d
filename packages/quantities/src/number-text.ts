import type { IssueCode } from './issue.ts'
import type { Stated } from './stated.ts'

/** How numbers are written where they come from. */
export interface NumberStyle {
  /** The mark between thousands; without it a dot or a comma is the decimal mark. */
  readonly thousands?: '.' | ','
}

/** The figure at the start of a text, and what follows it (the unit); or what is wrong with the figure. */
export interface Figure {
  readonly stated?: Stated
  readonly wrong?: IssueCode
  readonly rest: string
}

const NUMBER = String.raw`(?:\d+(?:[.,]\d+)*|[.,]\d+)(?:[eE][-+]?\d+)?`
const ABSENT =
  /^(?:n\.?\s?d\.?|n\.?\s?n\.?|not detected|none detected|not detectable|undetectable|bdl|nicht nachweisbar)(?![\p{L}\d])/iu
const SIGN = String.raw`(?<sign><=|>=|[<>≤≥~≈]|(?:ca\.?|circa|about|approx\.?|below|under|above|over)(?=[\s\d.,]))`
const SPAN = new RegExp(
  `^${SIGN}?\\s*(?<low>[-−+]?${NUMBER})(?:\\s*(?:-|–|—|to|bis|\\.\\.+|…)\\s*(?<high>${NUMBER}))?(?<rest>.*)$`,
  'isu',
)

/** Reads '1,5', '<0.03', '0.03-0.05', '~2', '>50', 'n.d.' with whatever follows. */
export function readFigure(text: string, style: NumberStyle = {}): Figure {
  const typed = text.trim()
  if (typed === '') return { wrong: 'empty', rest: '' }
  const absent = ABSENT.exec(typed)
  if (absent !== null) return { stated: { is: 'not detected' }, rest: typed.slice(absent[0].length).trim() }
  const { sign, low = '', high, rest = typed } = SPAN.exec(typed)?.groups ?? {}
  const first = plainNumber(low, style)
  const unit = rest.trim()
  // a mark, digit or sign right behind the number was meant as part of it
  if (first === undefined || /^[\d.,'’+−-]/.test(unit)) return { wrong: 'not-a-number', rest: unit }
  if (high === undefined) return { stated: withSign(sign?.toLowerCase(), first), rest: unit }
  const second = plainNumber(high, style)
  if (second === undefined || sign !== undefined) return { wrong: 'not-a-number', rest: unit }
  if (second < first) return { wrong: 'range-reversed', rest: unit }
  return { stated: { is: 'between', low: first, high: second }, rest: unit }
}

function withSign(sign: string | undefined, value: number): Stated {
  if (sign === undefined) return { is: 'exact', value }
  if (['<', '<=', '≤', 'below', 'under'].includes(sign)) return { is: 'below', limit: value }
  if (['>', '>=', '≥', 'above', 'over'].includes(sign)) return { is: 'above', limit: value }
  return { is: 'about', value }
}

function plainNumber(text: string, { thousands }: NumberStyle): number | undefined {
  let digits = text.replace('−', '-')
  if (thousands !== undefined) {
    const decimal = thousands === '.' ? ',' : '.'
    const whole = digits.split(decimal)[0] ?? ''
    if (whole.includes(thousands) && !/^[-+]?\d{1,3}(?:[.,]\d{3})+$/.test(whole)) return undefined
    digits = whole.replaceAll(thousands, '') + digits.slice(whole.length)
  }
  if ((digits.match(/[.,]/g) ?? []).length > 1) return undefined
  const value = Number(digits.replace(',', '.'))
  return digits !== '' && Number.isFinite(value) ? value : undefined
}
