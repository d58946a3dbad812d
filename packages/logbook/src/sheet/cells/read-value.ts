import { type Answer, type Reading, readFigure } from '@holdfast/quantities'

import type { ReadQuantity } from '../../entries/reading.ts'
import type { Cell } from '../book/book.ts'
import { isUnitText } from '../table/header.ts'
import { numberInWord, readPhrase } from '../words/phrases.ts'
import { spellFigures } from './figure-text.ts'
import { type Measure, optionsOf } from './measure.ts'
import { doubtsOf, type Missing, missingFor, missingIn } from './missing.ts'
import { isPossible } from './possible.ts'
import { canonicalOf, middleOf, readAs } from './to-canonical.ts'

/** A value in the canonical unit of its quantity. */
export interface Value {
  /** The limit, the end of the scale or the middle of a span where it is no plain figure. */
  readonly value: number | null
  readonly belowDetection: boolean
  readonly aboveRange?: true
  readonly approximate?: true
  readonly interval?: readonly [number, number]
  /** "0" or a word: nothing was detected, and the limit is not told. */
  readonly limitless?: 'zero' | 'word'
  /** Where the cell says them itself. */
  readonly unit?: string
  readonly form?: string
  /** Words beside the figure. */
  readonly remark?: string
}

export type ValueSays =
  | { readonly says: 'nothing'; readonly why: string }
  | { readonly says: 'value'; readonly value: Value; readonly odd?: string }
  | { readonly says: 'missing'; readonly missing: readonly Missing[] }
  | { readonly says: 'words' }
  | { readonly says: 'number in a word'; readonly number: number }
  | {
      readonly says: 'two numbers'
      readonly first: string
      readonly second: string
      readonly isRedone: boolean
      readonly unit?: string
    }
  | { readonly says: 'not read'; readonly why: string }

/** A colour kit cannot read zero, so a 0 of these is a reading below the kit's limit. */
const readByKit = new Set<ReadQuantity>(['nitrate', 'nitrite', 'phosphate', 'ammonia'])

const redone =
  /redone|redo|repeat|again|retest|second|2nd|new test|wiederholt|wiederholung|nochmal|neu|refait|a nouveau|repet|rifatto|ripetuto|opnieuw|herhaald|recheck|corr/i

/** Reads the cell of a value. */
export function readValue(cell: Cell, measure: Measure, decimal: '.' | ','): ValueSays {
  const { quantity } = measure
  const phrase =
    cell.number === undefined ? readPhrase(cell.text) : { is: 'figure' as const, text: cell.text }
  if (phrase.is === 'nothing') return { says: 'nothing', why: `"${cell.text}" stands for a missing value` }
  if (phrase.is !== 'figure') {
    const value: Value = { value: null, belowDetection: true, limitless: 'word', ...remarkIn(phrase.text) }
    const missing = missingFor(measure, '1')
    if (missing.length > 0 && !readByKit.has(quantity)) return { says: 'missing', missing }
    return {
      says: 'value',
      value,
      ...(phrase.is === 'trace' && { odd: 'a word for a little: taken as below detection' }),
    }
  }
  const options = optionsOf(measure)
  const fits = (value: number): boolean => {
    const answer = readAs(quantity, String(value), options)
    if (!answer.ok) return true
    const middle = middleOf(answer.value.stated)
    return isPossible(quantity, middle === null ? undefined : canonicalOf(answer.value)(middle))
  }
  const spelled = cell.number === undefined ? spellFigures(phrase.text, decimal, fits) : { text: phrase.text }
  if (spelled.twoWays !== undefined) {
    const [parted, whole] = spelled.twoWays
    return { says: 'two numbers', first: parted, second: whole, isRedone: false }
  }
  return understand(spelled.text, cell.text, measure, spelled.odd)
}

function understand(text: string, written: string, measure: Measure, odd: string | undefined): ValueSays {
  const { quantity } = measure
  const number = numberInWord(written)
  if (number !== undefined) return { says: 'number in a word', number }
  if (!/\d/.test(text)) return { says: 'words' }
  const found = answerWithRemark(withSpread(text), measure)
  if (found === 'words') return { says: 'words' }
  if (found === 'no unit of it') return { says: 'not read', why: `"${written}" has a unit of another kind` }
  const { answer, remark, ownUnit } = found
  const other = /(?<![\p{L}\d])\d+(?:[.,]\d+)?(?![\d/.])/u.exec(remark)?.[0]
  if (other !== undefined && !/^\s*(?:%|\/)/.test(remark)) {
    const { figure } = readFigure(text, { decimal: '.' })
    const unit = ownUnit === undefined ? {} : { unit: ownUnit }
    return { says: 'two numbers', first: figure, second: other, isRedone: redone.test(remark), ...unit }
  }
  if (!answer.ok) {
    const missing = missingIn(answer, measure, text)
    if (missing !== undefined) return { says: 'missing', missing }
    const [issue] = answer.issues ?? []
    const why =
      issue?.code === 'negative' ? 'it is below 0' : `"${written}" is no ${quantity} that we can read`
    return { says: 'not read', why }
  }
  const doubts = doubtsOf(measure, answer.value.unit, ownUnit !== undefined)
  if (doubts.length > 0) return { says: 'missing', missing: doubts }
  const value = valueFrom(answer.value, measure, remark, ownUnit)
  return value === undefined
    ? { says: 'not read', why: 'no sea water reads so' }
    : { says: 'value', value, ...oddOf(odd, remark) }
}

function oddOf(odd: string | undefined, remark: string): { readonly odd?: string } {
  if (odd !== undefined) return { odd }
  return remark === '' || /^[?!*'"]+$/.test(remark) ? {} : { odd: 'words beside the figure' }
}

/** "5 ± 1" is from 4 to 6. */
function withSpread(text: string): string {
  const [whole, middle, spread] = /^\s*([\d.]+)\s*(?:\+\s*\/?\s*-|±)\s*([\d.]+)/.exec(text) ?? []
  if (whole === undefined) return text
  const [low, high] = [Number(middle) - Number(spread), Number(middle) + Number(spread)]
  const shown = (end: number): string => String(Number(Math.max(0, end).toPrecision(6)))
  return Number.isFinite(low) && low < high ? `${shown(low)}-${shown(high)}${text.slice(whole.length)}` : text
}

interface WithRemark {
  readonly answer: Answer<Reading>
  readonly remark: string
  readonly ownUnit?: string
}

/** The longest beginning of a cell that is a reading, and the words behind it. */
function answerWithRemark(text: string, measure: Measure): WithRemark | 'words' | 'no unit of it' {
  const options = optionsOf(measure)
  const { stated, figure, rest, wrong } = readFigure(text, options)
  if (stated === undefined || wrong !== undefined) return 'words'
  const words = rest.split(/\s+|(?=[([?!*;])/).filter((word) => word !== '')
  for (let count = words.length; count >= 0; count--) {
    const own = words.slice(0, count).join(' ')
    const answer = readAs(measure.quantity, `${figure} ${own}`.trim(), options)
    const isUnit = answer.ok || answer.ask !== undefined || answer.issues.every(isNoMatterOfUnits)
    if (!isUnit) continue
    const left = words.slice(count).join(' ')
    if (count === 0 && (isUnitText(words[0] ?? '') || isPerAmount.test(words[0] ?? '')))
      return 'no unit of it'
    // "2nd kit" is no 2: letters right behind a figure belong to it
    if (count === 0 && /\d\p{L}/u.test(text.trim().slice(0, figure.length + 1))) return 'words'
    return { answer, remark: left, ...(own !== '' && { ownUnit: own }) }
  }
  return 'words'
}

/** "g/l" is no remark though it may be no unit we know: what is a part of an amount of water is a unit. */
const isPerAmount = /^[\p{L}µ%‰]{1,5}\/(?:[dm]?l|lt?r|liter|litre|kg|gal)$/iu

const isNoMatterOfUnits = ({ code }: { readonly code: string }): boolean =>
  code !== 'unknown-unit' && code !== 'wrong-dimension'

function valueFrom(
  reading: Reading,
  measure: Measure,
  remark: string,
  ownUnit: string | undefined,
): Value | undefined {
  const { stated } = reading
  // practical from Absolute Salinity of standard composition: 35.16504 g/kg is 35 (Millero et al. 2008)
  const isAbsolute = measure.quantity === 'salinity' && measure.salinityScale === 'absolute (g/kg)'
  const scaled = canonicalOf(reading)
  const turn = (value: number): number | undefined =>
    scaled(isAbsolute && reading.canonical === 'psu' ? (value * 35) / 35.16504 : value)
  const middle = middleOf(stated)
  const value = middle === null ? null : turn(middle)
  if (value === undefined) return undefined
  const words = remark.replace(/^[?!*'"\s]+|[\s]+$/g, '').replace(/^\((.*)\)$/, '$1')
  const isUnsure = /\?/.test(remark) || stated.is === 'about'
  const said = {
    ...(ownUnit !== undefined && { unit: withoutForm(ownUnit, reading.form) }),
    ...(reading.form !== undefined && { form: reading.form }),
    ...(words !== '' && { remark: words }),
  }
  if (value === 0 && stated.is !== 'below' && readByKit.has(measure.quantity))
    return { value: 0, belowDetection: true, limitless: 'zero', ...said }
  if (stated.is === 'below') return { value, belowDetection: true, ...said }
  if (stated.is === 'above') return { value, belowDetection: false, aboveRange: true, ...said }
  if (stated.is === 'between') {
    const [low, high] = [turn(stated.low), turn(stated.high)]
    if (low === undefined || high === undefined) return undefined
    return { value, belowDetection: false, interval: [low, high], ...said }
  }
  return { value, belowDetection: false, ...(isUnsure && { approximate: true as const }), ...said }
}

const withoutForm = (unit: string, form: string | undefined): string =>
  form === undefined
    ? unit
    : unit.replace(/\s+(?:as\s+)?(?:NO3|NO2|PO4|NH3|NH4)(?:-?[NP])?$/i, '').trim() || unit

const remarkIn = (text: string): { readonly remark?: string } =>
  text === '' || isUnitText(text) ? {} : { remark: text.replace(/^\((.*)\)$/, '$1') }
