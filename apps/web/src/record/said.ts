import { named } from '@holdfast/facts/names'
import type { JournalLine } from '@holdfast/logbook'
import { withMark } from '../ways/decimal.ts'

/**
 * What an entry says, as this keeper reads it: our sentences with the names of algae and the keeper's decimal
 * mark, the keeper's own words as they were written.
 */
export function said({ entry: { kind, body }, says }: Pick<JournalLine, 'entry' | 'says'>): string {
  const isTheirs = kind === 'note' || ('text' in body && body.text === says)
  return isTheirs ? says : withMark(named(says))
}
