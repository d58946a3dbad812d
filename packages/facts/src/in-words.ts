import type { Fact, Provenance } from './fact.ts'
import { type Source, source } from './source.ts'

/** How a number is known and what is to be said of it, such as how an estimate was made. */
export function howKnown({ provenance, note }: Fact): string {
  if (note === undefined) return provenanceInWords[provenance]
  const saysSo = provenance === 'estimate' && note.startsWith('Estimate')
  return saysSo ? ended(note) : `${provenanceInWords[provenance]} ${ended(note)}`
}

const provenanceInWords: Readonly<Record<Provenance, string>> = {
  read: 'Read in its source.',
  memory: 'Recalled from its source, and not looked up again.',
  'common practice': 'Common practice: a rule of thumb of keepers.',
  estimate: 'An estimate made here.',
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
  const parts = [`${authors}${year === null ? '' : ` (${year})`}`, title, where, seenInWords[seen]]
  const text = parts.flatMap((part) => (part ? [ended(part)] : [])).join(' ')
  return { text, ...(doi !== undefined && { doi }) }
}

/** A text with its full stop. */
const ended = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`)

const seenInWords: Readonly<Record<Source['seen'], string>> = {
  'in full': 'Seen in full.',
  abstract: 'Its abstract was seen.',
  no: 'The text itself was not seen.',
  'n/a': '',
}
