import { amount, unitOf } from '../../ways/amounts.ts'
import { withMark } from '../../ways/decimal.ts'
import { type BlankAt, understood } from './blank.ts'
import { blanksOf } from './blanks-of.ts'
import type { Letter } from './paragraph.ts'
import { valueAt, withValue } from './path.ts'

/** A figure with its unit; what says more, such as "about", stays as it was written. */
const isPlain = (text: string): boolean => /^[\d.,]+\s*\D/.test(text)

/** A text of the document in the unit and with the decimal mark of this keeper. */
function inOwnUnit(text: string, holds: BlankAt['holds']): string {
  if (typeof holds === 'string' || 'length' in holds || !isPlain(text)) return text
  const { amount: of } = holds
  if (of === undefined || text.endsWith(` ${unitOf(of)}`)) return withMark(text)
  const { value } = understood(text, holds)
  // What groups digits for the eye is no part of a number that is read again.
  return value === undefined ? text : amount(of, value).replaceAll('\u202f', '')
}

/** The letter as this keeper reads it. */
export const inOwnUnits = (letter: Letter): Letter =>
  blanksOf(letter).reduce((whole, { path, holds }) => {
    const text = valueAt(whole, path)
    const own = typeof text === 'string' ? inOwnUnit(text, holds) : text
    return own === text ? whole : withValue(whole, path, own)
  }, letter)

/** The letter with what nobody touched as it was written, to the last digit. */
export function asWritten(letter: Letter, written: Letter): Letter {
  const shown = inOwnUnits(written)
  const texts = blanksOf(written).flatMap(({ path }) => {
    const [own, text] = [valueAt(shown, path), valueAt(written, path)]
    return own === text ? [] : [[own, text] as const]
  })
  const first = new Map(texts.toReversed())
  return blanksOf(letter).reduce((whole, { path }) => {
    const text = valueAt(whole, path)
    // Things that went let others move up: what is not in its place is known by its text.
    const before = valueAt(shown, path) === text ? valueAt(written, path) : first.get(text)
    return before === undefined || before === text ? whole : withValue(whole, path, before)
  }, letter)
}
