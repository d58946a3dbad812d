import {
  type Fact,
  facts,
  factsHolding,
  familyOf,
  howKnown,
  referencesOf,
  source,
  weakest,
} from '@holdfast/facts'
import { refuse } from '../refuse.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface FactsOptions {
  /** So many of the estimates with the widest bands. */
  readonly weakest?: number
  readonly json?: true
}

/** Facts whose text holds every word, a line each; a fact found alone or asked for by its id, in full. */
export function factsCommand(words: readonly string[], options: FactsOptions, terminal: Terminal): void {
  const asked = words.join(' ')
  const holding = factsHolding(asked)
  const found =
    options.weakest === undefined
      ? holding.filter(({ id }, _, all) => id === asked || all.every((one) => one.id !== asked))
      : weakest(options.weakest).filter((one) => holding.includes(one))
  const [first] = found
  if (first === undefined)
    throw refuse(
      'no-fact',
      'Facts',
      `none of ${options.weakest ?? facts().length} holds ${words.map((word) => `"${word}"`).join(' and ')}`,
      'Words of titles, ids, families, conditions, notes and sources.',
      'Ask with fewer or other words, such as: holdfast facts nitrate half-saturation',
    )
  if (options.json) terminal.out(JSON.stringify(found.map(withSource), null, 2))
  else terminal.out(found.length === 1 ? inFull(first) : inLines(found))
}

const withSource = (one: Fact) => ({ ...one, source: source(one.source) })

/** A fact as the page of facts has it. */
function inFull(one: Fact): string {
  const { id, title, low, typical, high, unit, holds, aside } = one
  const of = unit === '1' ? '' : ` ${unit}`
  return [
    title,
    `${familyOf(id)}, ${id}`,
    '',
    low === high
      ? `${number(typical)}${of}, a constant`
      : `${number(low)} to ${number(high)}, typically ${number(typical)}${of}`,
    `Holds for: ${holds}.`,
    howKnown(one),
    ...referencesOf(one).map(({ text, doi }) => (doi === undefined ? text : `${text} doi:${doi}`)),
    ...(aside === undefined ? [] : [`No formula reads it: ${aside}.`]),
  ].join('\n')
}

const inLines = (found: readonly Fact[]): string =>
  table(
    [
      { heading: 'Id' },
      { heading: 'Low', stands: 'right' },
      { heading: 'Typical', stands: 'right' },
      { heading: 'High', stands: 'right' },
      { heading: 'Unit' },
      { heading: 'Known by' },
      { heading: 'Source' },
      { heading: 'What' },
    ],
    found.map((one) => [
      one.id,
      number(one.low),
      number(one.typical),
      number(one.high),
      one.unit === '1' ? '' : one.unit,
      one.provenance,
      sourceText(one),
      one.title,
    ]),
  )

/** Authors and year, as one finds them in the list of sources. */
function sourceText(one: Fact): string {
  const { authors, year } = source(one.source)
  return year === null ? authors : `${authors} ${year}`
}

const number = (value: number): string => Number(value.toPrecision(3)).toString()
