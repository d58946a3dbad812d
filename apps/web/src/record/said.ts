import { named } from '@holdfast/facts/names'
import { type Entry, sayEntry } from '@holdfast/logbook'
import { withMark } from '../ways/decimal.ts'

/** An entry with its sentence. */
interface Said {
  readonly entry: Pick<Entry, 'kind' | 'body'>
  readonly says: string
}

/**
 * What an entry says, as this keeper reads it: our sentences with the names of algae and the keeper's decimal
 * mark, the keeper's own words as they were written.
 */
export function said({ entry: { kind, body }, says }: Said): string {
  const isTheirs = kind === 'note' || ('text' in body && body.text === says)
  if (isTheirs) return says
  // A kind whose key is a plain word is known by its place alone.
  const algae = 'algae' in body ? String(body.algae) : ''
  return withMark(named(says.replace(algae, named(algae))))
}

/** The same of an entry that was just written. */
export const saidOf = (entry: Entry): string => said({ entry, says: sayEntry(entry) })
