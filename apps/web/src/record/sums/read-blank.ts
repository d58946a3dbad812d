import {
  type Answer,
  type Asked,
  parseAlkalinity,
  parseSalinity,
  parseTemperature,
  parseVolume,
  type Question,
  type Refused,
  words,
} from '@holdfast/quantities'
import { densityEos80 } from '@holdfast/seawater'
import { plain } from '../../figure/numbers.ts'
import { withMark } from '../../ways/decimal.ts'
import { type Blank, type Given, within } from './sum.ts'

/** A number in the unit of the sum, what must be asked, or what is wrong in words. */
export type BlankRead = { readonly value: number } | { readonly ask: Question } | { readonly wrong: string }

/**
 * Reads what stands in a blank.
 *
 * @param before blanks already read: salinity and temperature tell what a litre weighs
 */
export function readBlank(blank: Blank, text: string, before: Given): BlankRead {
  const read = inUnitOfBlank(blank, text, before)
  if (!('value' in read)) return read
  const { label, unit, holds, start, factor = 1 } = blank
  if (holds !== undefined && !(read.value >= holds[0] && read.value <= holds[1])) {
    const accepted = `${plain(holds[0])} to ${plain(holds[1])} ${unit}`.trim()
    return {
      wrong: `${label}: "${text.trim()}" is beyond what the form holds for. Give ${accepted}, such as ${withMark(String(start))}.`,
    }
  }
  return { value: read.value * factor }
}

function inUnitOfBlank(blank: Blank, text: string, before: Given): BlankRead {
  const { label: where, kind } = blank
  switch (kind) {
    case 'temperature':
      return from(parseTemperature(text, { where, unit: '°C' }))
    case 'volume':
      return from(parseVolume(text, { where, unit: 'L' }))
    case 'alkalinity':
      return alkalinity(where, text, before)
    case 'salinity':
      return practical(where, text)
    case 'gravity':
    case 'number':
      return bare(blank, text)
  }
}

function from(answer: Answer<number>): BlankRead {
  return answer.ok ? { value: answer.value } : notRead(answer)
}

const notRead = ({ ask, issues }: Asked | Refused): BlankRead =>
  ask ? { ask } : { wrong: issues.map(words).join(' ') }

/** In meq/L. */
function alkalinity(where: string, text: string, before: Given): BlankRead {
  const answer = parseAlkalinity(text, { where, unit: 'dKH', ...densityOf(before) })
  if (!answer.ok) return notRead(answer)
  const { stated } = answer.value
  if (stated.is === 'exact' || stated.is === 'about') return { value: stated.value }
  return { wrong: `${where}: "${text.trim()}" is not one number. Give one such as 8 dKH.` }
}

function densityOf({ S, t }: Given): { readonly density?: number } {
  if (S === undefined || t === undefined) return {}
  const density = within('kg/L', () => densityEos80(S, t))
  return density.ok ? { density: density.value } : {}
}

function practical(where: string, text: string): BlankRead {
  const answer = parseSalinity(text, { where, unit: 'psu' })
  if (!answer.ok) return notRead(answer)
  if (answer.value.scale === 'practical') return { value: answer.value.psu }
  return { wrong: `${where}: "${text.trim()}" is a specific gravity. Find its salinity with the first sum.` }
}

/** A number without a unit, or with just that of the blank. */
function bare({ label, kind, unit, start }: Blank, text: string): BlankRead {
  const typed = text.trim()
  const figure = unit !== '' && typed.endsWith(unit) ? typed.slice(0, -unit.length).trim() : typed
  // No gravity is above 2, so that its comma parts no thousands.
  if (kind !== 'gravity' && /^\d{1,3}(,\d{3})+$/.test(figure)) return { ask: whichComma(label, figure) }
  const value = Number(figure.replace(',', '.'))
  if (figure !== '' && Number.isFinite(value)) return { value }
  return {
    wrong: `${label}: "${typed}" is no number we can read. Give one such as ${withMark(`${start} ${unit}`.trim())}.`,
  }
}

function whichComma(where: string, got: string): Question {
  const [decimal, whole] = [got.replace(',', '.'), got.replaceAll(',', '')]
  const question = `${where}: is "${got}" with a decimal comma, or with a comma between thousands?`
  const options = [
    { answer: decimal, means: 'the comma is the decimal mark' },
    { answer: whole, means: 'the comma parts thousands' },
  ]
  return { code: 'which-comma', where, got, question, options }
}
