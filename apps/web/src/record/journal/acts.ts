import type { Entry, JournalLine } from '@holdfast/logbook'
import type { Texts } from '../log/own-texts.ts'

/** What can be done with a line of the journal; each writes an entry and changes none. */
export interface Acts {
  readonly correct: (line: JournalLine, correction: Entry, typed: Texts) => void
  /** Takes back an entry, or every entry of an import. */
  readonly undo: (of: 'entry' | 'batch', id: string, says: string) => void
  /** Takes back what took it back. */
  readonly bringBack: (retraction: string, says: string) => void
}
