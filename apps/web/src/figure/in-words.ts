import { dayInShort } from '../ways/dates.ts'
import { withMark } from '../ways/decimal.ts'
import { ways } from '../ways/ways.ts'
import type { FactUsed } from '../worker/answers.ts'
import { type ComputedFigure, isExact, type LogEntry } from './computed.ts'
import { plain } from './numbers.ts'

/** What is said of a derivation, the same on the page and in the text that is copied. */

export const spreadWords = (of: ComputedFigure) =>
  isExact(of)
    ? 'It has no spread: it is the same in every simulated tank.'
    : 'In nine cases of ten it lies between the two numbers in brackets.'

/** A declared formula with the signs of print; where the decimal mark is a comma, arguments stand apart otherwise. */
export const typeset = (formula: string) =>
  withMark(ways().decimal === 'comma' ? formula.replaceAll(', ', '; ') : formula)
    .replaceAll(' * ', ' × ')
    .replaceAll(' / ', ' ÷ ')
    .replaceAll(' - ', ' − ')

export const valueOfFact = ({ typical, low, high, unit }: FactUsed) =>
  `${plain(typical)} (${plain(low)} to ${plain(high)}) ${unit}`

export const sourceOfFact = ({ source, provenance }: FactUsed) =>
  `${source}; ${provenanceWords[provenance] ?? provenance}.`

const provenanceWords: Readonly<Record<string, string>> = {
  read: 'read in the source',
  memory: 'from memory, to be confirmed',
  estimate: 'our estimate',
}

export const headings = {
  facts: 'Facts it uses',
  noFacts: 'No fact of the catalogue enters into it directly.',
  processes: 'Processes behind it',
  values: 'With typical values put in, before your log narrows them:',
  entries: 'Entries of your log it rests on',
  noEntries: 'No entry of your log bears on it directly.',
} as const

/** When an entry was so: its day, and the time where one was said. */
export function whenOf({ at }: LogEntry): string {
  const time = /T(\d\d:\d\d)/.exec(at)?.[1]
  return [dayInShort(at.slice(0, 10)), time].filter(Boolean).join(', ')
}
