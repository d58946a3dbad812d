import type { Stored } from '../entries/entry.ts'
import { readEntry } from '../entries/read-entry.ts'
import { Refused } from '../issue.ts'
import type { Kept, Sent } from '../logbook.ts'
import { sealOf } from './seal.ts'
import type { EntryRow } from './tables.ts'

/** The row of an entry that comes now. */
export function rowOf(entry: Sent, receipt: number, known_at: string): EntryRow {
  const { workspace, id, system, kind, at, replaces = null } = entry
  const row = { workspace, id, receipt, system, kind, day: at.slice(0, 10), known_at, replaces }
  const whole = { ...row, document: JSON.stringify(entry) }
  return { ...whole, seal: sealOf('entry', whole) }
}

/** The entry as it was sent. @throws Refused when the row is not as it was written */
export function keptOf(row: EntryRow): Kept {
  if (sealOf('entry', row) !== row.seal) {
    throw new Refused([
      {
        code: 'damaged-entry',
        where: `Entry ${row.id}`,
        got: 'what is stored is not what was written: the disk changed it',
        accepted: 'An entry as this program wrote it.',
        next: 'Put your last backup in the place of the log and keep the damaged one. Nothing was changed.',
      },
    ])
  }
  return { ...JSON.parse(row.document), knownAt: row.known_at }
}

/** The entry at the newest version of its kind. @throws Refused when damaged or of a newer program */
export function storedOf(row: EntryRow): Stored {
  const { knownAt, ...sent } = keptOf(row)
  const read = readEntry(sent)
  if (!read.ok) throw new Refused(read.issues)
  return { ...read.entry, knownAt }
}
