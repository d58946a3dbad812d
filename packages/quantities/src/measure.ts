import { between } from './convert.ts'
import { namedByCountry, whichCountry } from './country-measures.ts'
import { whichFigure } from './figure-doubt.ts'
import { type Answer, type Issue, type IssueCode, type NextStep, refused, understood } from './issue.ts'
import { readFigure } from './number-text.ts'
import { parseUnit, readUnit } from './parse-unit.ts'
import type { Reading, ReadingOptions } from './reading.ts'
import { isHeld, lowest, mapStated, oneNumber, type Stated } from './stated.ts'
import { sameDimension, type Unit } from './unit.ts'

/** A quantity that has a unit and nothing else. */
export interface Measure {
  readonly where: string
  readonly next: NextStep
  readonly canonical: string
  /** Units that are shown to people. */
  readonly accepted: readonly string[]
  readonly lowest: 'above 0' | '0' | 'any'
  /** Names of its own, or what is wrong with a name; undefined leaves the name to the table of units. */
  readonly unitNamed?: (written: string, options: ReadingOptions) => Unit | IssueCode | undefined
}

type Takes = 'one number' | 'limits and spans'

/** A measure with its unit, kept as it was stated. */
export function readMeasure(
  measure: Measure,
  text: string,
  options: ReadingOptions = {},
  takes: Takes = 'limits and spans',
): Answer<Reading> {
  const where = options.where ?? measure.where
  const got = text.trim()
  const { accepted, next } = measure
  const issue = (code: IssueCode): Issue => ({ code, where, got, accepted, next })
  const found = readFigure(text, options)
  const { stated, figure, rest } = found
  if (found.wrong === 'empty') return refused(issue('empty'))
  const written = rest === '' ? (options.unit ?? '') : rest
  const asked = whichCountry(where, rest === '' ? `${got} ${written}` : got, figure, written)
  // of whichever country, it is of one kind
  const unit = unitOf(measure, asked === undefined ? written : `US ${written}`, options)
  const issues: Issue[] = []
  if (found.wrong !== undefined) issues.push(issue(found.wrong))
  if (typeof unit === 'string') issues.push(issue(unit))
  const wrong = stated && outOfReach(measure, stated, takes)
  if (wrong !== undefined) issues.push(issue(wrong))
  if (stated === undefined || typeof unit === 'string' || issues.length > 0) return refused(...issues)
  const ask = whichFigure(found, { where, got, written }, options) ?? asked
  if (ask !== undefined) return ask
  const canonical = parseUnit(measure.canonical)
  const value = mapStated(stated, (typed) => between(typed, unit, canonical))
  const lost = isHeld(value) ? outOfReach(measure, value, takes) : 'too-large'
  if (lost !== undefined) return refused(issue(lost))
  const step = options.step === undefined ? {} : { step: options.step * (unit.factor / canonical.factor) }
  return understood({ text: got, stated: value, canonical: measure.canonical, unit: written, ...step })
}

/** One number of a measure in its canonical unit. */
export function parseMeasure(measure: Measure, text: string, options?: ReadingOptions): Answer<number> {
  const answer = readMeasure(measure, text, options, 'one number')
  if (!answer.ok) return answer
  const value = oneNumber(answer.value.stated)
  if (value === undefined) throw new Error(`"${text}" was taken for one number`)
  return understood(value)
}

function outOfReach(measure: Measure, stated: Stated, takes: Takes): IssueCode | undefined {
  if (stated.is === 'not detected') return 'not-one-number'
  if (takes === 'one number' && oneNumber(stated) === undefined) return 'not-one-number'
  const least = lowest(stated) ?? 0
  if (measure.lowest !== 'any' && least < 0) return 'negative'
  return measure.lowest === 'above 0' && least === 0 ? 'zero' : undefined
}

/** The unit, or what is wrong with it. */
function unitOf(measure: Measure, written: string, options: ReadingOptions): Unit | IssueCode {
  if (written === '') return 'no-unit'
  const own = measure.unitNamed?.(written, options)
  if (own !== undefined) return own
  const name = namedDegrees(namedByCountry(written))
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
