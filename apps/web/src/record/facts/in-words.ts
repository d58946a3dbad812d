import { type Fact, type Provenance, type Range, type Source, source } from '@holdfast/facts'
import { plain } from '../../figure/numbers.ts'

/** Where a number comes from, as a sentence; how an estimate was made stands in its note. */
export const provenanceInWords: Readonly<Record<Provenance, string>> = {
  read: 'Read in its source.',
  memory: 'Recalled from its source, and not looked up again.',
  'common practice': 'Common practice: a rule of thumb of keepers.',
  estimate: 'An estimate made here.',
}

/** Low, typical and high with their unit. */
export function rangeInWords({ low, typical, high }: Range, unit: string): string {
  const of = unit === '1' ? '' : ` ${unit}`
  if (low === high) return `${plain(typical)}${of}, a constant`
  return `${plain(low)} to ${plain(high)}, typically ${plain(typical)}${of}`
}

/** A reference written out. */
export interface Reference {
  readonly text: string
  readonly doi?: string
}

/** The source of a fact and what else it rests on. */
export const referencesOf = ({ source: first, also = [] }: Fact): readonly Reference[] =>
  [first, ...also].map((key) => written(source(key)))

function written({ authors, year, title, where, doi, seen }: Source): Reference {
  const text = [`${authors}${year === null ? '' : ` (${year})`}`, title, where].filter(Boolean).join('. ')
  return { text: `${text}. ${seenInWords[seen]}`.trim(), ...(doi !== undefined && { doi }) }
}

const seenInWords: Readonly<Record<Source['seen'], string>> = {
  'in full': 'Seen in full.',
  abstract: 'Its abstract was seen.',
  no: 'The text itself was not seen.',
  'n/a': '',
}
