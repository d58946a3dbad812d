import { between } from './convert.ts'
import { namedGallons, whichGallon } from './gallons.ts'
import { type Answer, type Issue, type IssueCode, type NextStep, refused, understood } from './issue.ts'
import type {
  Centimetres,
  Days,
  DegreesCelsius,
  Grams,
  Litres,
  LitresPerHour,
  SquareMetres,
} from './measured.ts'
import { type NumberStyle, readFigure } from './number-text.ts'
import { parseUnit, readUnit } from './parse-unit.ts'
import { sameDimension, type Unit } from './unit.ts'

interface Measure {
  readonly where: string
  readonly next: NextStep
  readonly canonical: string
  readonly accepted: readonly string[]
  readonly lowest: 'above 0' | '0' | 'any'
}

export interface MeasureOptions extends NumberStyle {
  /** Name of the field, for the words of an issue. */
  readonly where?: string
  /** The unit where the text has none, such as that of the column. */
  readonly unit?: string
}

const volume: Measure = {
  where: 'Volume',
  next: 'give-volume',
  canonical: 'L',
  accepted: ['L', 'mL', 'm³', 'US gal', 'imp gal'],
  lowest: 'above 0',
}
const mass: Measure = {
  where: 'Mass',
  next: 'give-mass',
  canonical: 'g',
  accepted: ['g', 'mg', 'kg', 'oz', 'lb'],
  lowest: '0',
}
const area: Measure = {
  where: 'Area',
  next: 'give-area',
  canonical: 'm²',
  accepted: ['m²', 'cm²', 'ft²', 'in²'],
  lowest: 'above 0',
}
const length: Measure = {
  where: 'Length',
  next: 'give-length',
  canonical: 'cm',
  accepted: ['cm', 'mm', 'm', 'in', 'ft'],
  lowest: 'above 0',
}
const temperature: Measure = {
  where: 'Temperature',
  next: 'give-temperature',
  canonical: '°C',
  accepted: ['°C', '°F'],
  lowest: 'any',
}
const duration: Measure = {
  where: 'Duration',
  next: 'give-duration',
  canonical: 'd',
  accepted: ['min', 'h', 'd', 'week'],
  lowest: '0',
}
const flow: Measure = {
  where: 'Flow',
  next: 'give-flow',
  canonical: 'L/h',
  accepted: ['L/h', 'm³/h', 'US gph', 'imp gph'],
  lowest: '0',
}

/** '60 L', '16 US gal'; one number above 0. */
export function parseVolume(text: string, options?: MeasureOptions): Answer<Litres> {
  return parseMeasure(volume, text, options)
}

/** '12 g', '2 oz'; one number not below 0. */
export function parseMass(text: string, options?: MeasureOptions): Answer<Grams> {
  return parseMeasure(mass, text, options)
}

/** '0.5 m2', '120 in2'; one number above 0. */
export function parseArea(text: string, options?: MeasureOptions): Answer<SquareMetres> {
  return parseMeasure(area, text, options)
}

/** '90 cm', '36 in'; one number above 0. */
export function parseLength(text: string, options?: MeasureOptions): Answer<Centimetres> {
  return parseMeasure(length, text, options)
}

/** '25.5 °C', '78F'; one number. */
export function parseTemperature(text: string, options?: MeasureOptions): Answer<DegreesCelsius> {
  return parseMeasure(temperature, text, options)
}

/** '12 h', '2 weeks'; one number not below 0. */
export function parseDuration(text: string, options?: MeasureOptions): Answer<Days> {
  return parseMeasure(duration, text, options)
}

/** '800 L/h', '200 US gph'; one number not below 0. */
export function parseFlow(text: string, options?: MeasureOptions): Answer<LitresPerHour> {
  return parseMeasure(flow, text, options)
}

function parseMeasure(measure: Measure, text: string, options: MeasureOptions = {}): Answer<number> {
  const where = options.where ?? measure.where
  const issue = (code: IssueCode): Issue => ({
    code,
    where,
    got: text.trim(),
    accepted: measure.accepted,
    next: measure.next,
  })
  const { stated, wrong, rest } = readFigure(text, options)
  if (wrong === 'empty') return refused(issue('empty'))
  const written = rest === '' ? (options.unit ?? '') : rest
  const ask = whichGallon(where, rest === '' ? `${text.trim()} ${written}` : text, written)
  const unit = unitOf(measure, written)
  const issues: Issue[] = []
  if (wrong !== undefined) issues.push(issue(wrong))
  if (typeof unit === 'string' && ask === undefined) issues.push(issue(unit))
  if (stated !== undefined) {
    if (stated.is !== 'exact' && stated.is !== 'about') issues.push(issue('not-one-number'))
    else if (measure.lowest !== 'any' && stated.value < 0) issues.push(issue('negative'))
    else if (measure.lowest === 'above 0' && stated.value === 0) issues.push(issue('zero'))
    else if (issues.length === 0 && ask === undefined && typeof unit !== 'string')
      return understood(between(stated.value, unit, parseUnit(measure.canonical)))
  }
  return ask !== undefined && issues.length === 0 ? ask : refused(...issues)
}

/** The unit, or what is wrong with it. */
function unitOf(measure: Measure, written: string): Unit | IssueCode {
  if (written === '') return 'no-unit'
  const name = namedDegrees(namedGallons(written))
  const exact = readUnit(name)
  // people write 'KG' and 'Litres'; facts and formulas do not
  const answer = exact.ok ? exact : readUnit(name.toLowerCase())
  if (!answer.ok) return 'unknown-unit'
  return sameDimension(answer.value, parseUnit(measure.canonical)) ? answer.value : 'wrong-dimension'
}

function namedDegrees(written: string): string {
  return written.replace(/^(?:°|º|deg(?:rees)?)?\s*(?:(c)(?:elsius)?|(f)(?:ahrenheit)?)$/i, (_, celsius) =>
    celsius === undefined ? '°F' : '°C',
  )
}
