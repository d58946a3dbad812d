import { type Fact, facts, source, weakest } from '@holdfast/facts'
import { refuse } from '../refuse.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface FactsOptions {
  /** So many of the estimates with the widest bands. */
  readonly weakest?: number
  readonly json?: true
}

/** Facts whose id, title, conditions or source hold every word; all of them without a word. */
export function factsCommand(words: readonly string[], options: FactsOptions, terminal: Terminal): void {
  const among = options.weakest === undefined ? facts() : weakest(options.weakest)
  const found = among.filter((one) => words.every((word) => holds(one, word.toLowerCase())))
  if (found.length === 0)
    throw refuse(
      'no-fact',
      'Facts',
      `none of ${among.length} holds ${words.map((word) => `"${word}"`).join(' and ')}`,
      'Words of titles, ids, conditions and sources.',
      'Ask with fewer or other words, such as: holdfast facts nitrate half-saturation',
    )
  terminal.out(options.json ? JSON.stringify(found.map(withSource), null, 2) : inWords(found))
}

const holds = (one: Fact, word: string): boolean =>
  [one.id, one.title, one.holds, sourceText(one)].some((text) => text.toLowerCase().includes(word))

/** Authors and year, as one finds them in the list of sources. */
function sourceText(one: Fact): string {
  const { authors, year } = source(one.source)
  return year === null ? authors : `${authors} ${year}`
}

const withSource = (one: Fact) => ({ ...one, source: source(one.source) })

const inWords = (found: readonly Fact[]): string =>
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
      one.unit,
      one.provenance,
      sourceText(one),
      one.title,
    ]),
  )

const number = (value: number): string => Number(value.toPrecision(3)).toString()
