import type { Entry, JournalLine } from '@holdfast/logbook'
import type { Texts } from '../log/own-texts.ts'

/** What can be done with a line of the journal; each writes an entry and changes none. */
export interface Acts {
  readonly correct: (line: JournalLine, correction: Entry, typed: Texts) => void
  readonly undo: (id: string, says: string) => void
  /** Takes back what took it back. */
  readonly bringBack: (retraction: string, says: string) => void
  /** The same with every entry of an import, of other systems too. */
  readonly undoImport: (batch: string, says: string) => void
  readonly bringImportBack: (batch: string, retraction: string, says: string) => void
}
