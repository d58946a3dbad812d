import type { Cell } from '../book/book.ts'
import type { Resolved, When } from '../dates/resolve-dates.ts'
import type { Noted } from '../notes/take-notes.ts'
import type { Questions } from '../questions.ts'
import { type Account, asWritten, placeName } from './account.ts'
import { decimalSign } from './figure-text.ts'
import type { FoundNote, FoundValue } from './gathered.ts'
import type { Measure } from './measure.ts'
import { measures } from './measures.ts'
import { isPossible } from './possible.ts'
import { readValue, type Value, type ValueSays } from './read-value.ts'
import { canonicalOf, middleOf, readAs } from './to-canonical.ts'

/** A reading where it stands, before its neighbours are looked at. */
export interface TakenValue extends FoundValue {
  readonly when: When
  readonly value: Value
  readonly measure: Measure
  readonly kitFrom?: string
  /** Changed by an answer, or far from its neighbours. */
  readonly suspect?: true
  readonly likely?: number
  readonly valueAsWritten?: number
  readonly firstValue?: number
}

export interface TakenValues {
  readonly values: readonly TakenValue[]
  /** Words among the figures. */
  readonly notes: readonly FoundNote[]
}

/** Reads every value; what must be known first is asked, and what is none is listed. */
export function takeValues(
  found: readonly FoundValue[],
  whenOf: (value: FoundValue) => Resolved,
  noted: readonly Noted[],
  questions: Questions,
  account: Account,
): TakenValues {
  const decimal = decimalSign(found.map(({ content }) => content.text))
  const measureOf = measures(found, noted, questions)
  const known = new Map<Measure, Map<Cell, ValueSays>>()
  const values: TakenValue[] = []
  const notes: FoundNote[] = []
  for (const value of found) {
    const measure = measureOf(value)
    const ofMeasure = known.get(measure) ?? new Map<Cell, ValueSays>()
    const says = ofMeasure.get(value.content) ?? readValue(value.content, measure, decimal)
    known.set(measure, ofMeasure.set(value.content, says))
    const taken = takeOne(value, says, measure, { questions, account, decimal })
    if (taken === 'words') {
      notes.push({
        ...value,
        text: value.content.text,
        ...(value.series.tank !== undefined && { tank: value.series.tank }),
      })
      account.point(value, value.content.text, 'words among the figures', 'kept as a note')
      continue
    }
    if (taken === undefined) continue
    const when = whenOf(value)
    if (typeof when === 'string') {
      if (when === 'waits') account.wait(value)
      else
        account.list(
          value,
          asWritten(value.content),
          `"${value.moment.written}" in ${value.moment.cell} is no date`,
        )
      continue
    }
    account.read(value)
    if (taken.odd !== undefined)
      account.point(value, asWritten(value.content), taken.odd, `read as ${shown(taken.value)}`)
    if (taken.value.aboveRange)
      account.point(value, value.content.text, 'above the range of the chart', 'read as above its end')
    if (
      taken.value.value !== null &&
      !taken.value.limitless &&
      !isPossible(measure.quantity, taken.value.value)
    )
      account.point(
        value,
        value.content.text,
        `cannot be the ${measure.quantity} of sea water`,
        'read as written: look at it',
      )
    values.push(takenFrom(value, when, taken, measure))
  }
  return { values, notes }
}

/** Written out part by part: a long log has millions, and a spread of each is slow. */
function takenFrom(found: FoundValue, when: When, { value, firstValue }: One, measure: Measure): TakenValue {
  const { cell, content, moment, table, row, series, sheet, remark } = found
  const taken: Draft = { cell, content, moment, table, row, series, when, value, measure }
  if (sheet !== undefined) taken.sheet = sheet
  if (remark !== undefined) taken.remark = remark
  if (firstValue !== undefined) taken.firstValue = firstValue
  return taken
}

type Draft = { -readonly [Key in keyof TakenValue]: TakenValue[Key] }

const shown = ({ value }: Value): string =>
  value === null ? 'below detection' : String(Number(value.toPrecision(4)))

interface One {
  readonly value: Value
  readonly odd?: string
  readonly firstValue?: number
}

interface Desk {
  readonly questions: Questions
  readonly account: Account
  readonly decimal: '.' | ','
}

function takeOne(
  found: FoundValue,
  says: ValueSays,
  measure: Measure,
  desk: Desk,
): One | 'words' | undefined {
  const { questions, account, decimal } = desk
  const { content, series } = found
  if (says.says === 'value') return withLimit(found, says, measure, questions)
  const place = placeName(found)
  const list = (why: string, taken?: string): undefined => {
    account.list(found, asWritten(content), why, taken)
    return undefined
  }
  switch (says.says) {
    case 'nothing':
      return list(says.why, 'treated as blank')
    case 'words':
      return 'words'
    case 'not read':
      return list(says.why)
    case 'missing': {
      for (const { topic, question, options } of says.missing)
        questions.choose(series, topic, question, options, [place])
      account.wait(found)
      return undefined
    }
    case 'number in a word': {
      const options = [String(says.number), 'leave out']
      const asked = { key: place, where: place }
      const answer = questions.offer(
        asked,
        'value',
        `"${content.text}": is it ${says.number}?`,
        options,
        [place],
        options[0],
      )
      if (answer === undefined || answer === 'leave out') return list('a number written as a word')
      return again(answer, measure, decimal)
    }
    case 'two numbers': {
      const { first, second, isRedone } = says
      const options = isRedone ? [second, first, 'leave out'] : [first, second, 'leave out']
      const asked = { key: place, where: place }
      account.point(found, content.text, 'two numbers in one cell', 'asked', isRedone ? second : undefined)
      const answer = questions.choose(
        asked,
        'value',
        `"${content.text}": which number holds?`,
        options,
        [place],
        isRedone ? second : undefined,
      )
      if (answer === undefined) {
        account.wait(found)
        return undefined
      }
      if (answer === 'leave out') return list('left out by the keeper')
      const unit = says.unit ?? ''
      const one = again(`${answer} ${unit}`, measure, decimal)
      const other = again(`${answer === first ? second : first} ${unit}`, measure, decimal)
      if (one === undefined) return list('no figure that we can read')
      const firstValue = isRedone ? (other?.value.value ?? undefined) : undefined
      return { value: { ...one.value, approximate: true }, ...(firstValue !== undefined && { firstValue }) }
    }
  }
}

function again(text: string, measure: Measure, decimal: '.' | ','): One | undefined {
  const says = readValue({ text: text.trim().replace('.', decimal) }, measure, decimal)
  return says.says === 'value' ? { value: says.value } : undefined
}

/** The limit that the keeper gives for "not detected", in the unit of the column. */
function withLimit(found: FoundValue, plainly: One, measure: Measure, questions: Questions): One {
  const { series, content } = found
  const { value } = plainly
  if (value.limitless === undefined) return plainly
  const question = `"${content.text}" means not detected: below which value, in the unit of the column?`
  const answer = questions.offer(series, 'limit', question, [], [placeName(found)])
  const zero = value.limitless === 'zero' ? { odd: 'no kit can read zero: taken as below detection' } : {}
  if (answer === undefined) return { ...zero, ...plainly, ...zero }
  const limit = limitOf(answer, measure)
  return limit === undefined ? plainly : { value: { ...withoutLimitless(value), value: limit } }
}

function limitOf(answer: string, measure: Measure): number | undefined {
  const { quantity, unit, form } = measure
  const read = readAs(quantity, answer.replace(',', '.'), {
    unit: unit ?? 'mg/L',
    ...(form !== undefined && { form }),
    decimal: '.',
  })
  if (!read.ok) return undefined
  const middle = middleOf(read.value.stated)
  return middle === null ? undefined : canonicalOf(read.value)(middle)
}

function withoutLimitless({ limitless: _, ...value }: Value): Value {
  return value
}
