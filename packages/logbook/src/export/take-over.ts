import { Refused } from '../issue.ts'
import type { Appended, Logbook } from '../logbook.ts'
import { readExport } from './read-export.ts'

/** What became of an export. */
export interface TakenOver extends Appended {
  /** When the export was made, an ISO instant. */
  readonly madeAt: string
  /** Ids of the systems in it. */
  readonly systems: readonly string[]
  /** How many attachments came with it. */
  readonly attachments: number
  /** Attachments that the log had lost before it was exported, by their SHA-256. */
  readonly leftOut: readonly string[]
}

/**
 * Stores all that an export holds: ids, order and times of receipt as they were, into the workspace of
 * this log. What is here already stays, so that taking the same export over twice changes nothing.
 *
 * @throws Refused with all issues when the export is not whole; then nothing is stored
 */
export async function takeOverExport(logbook: Logbook, bytes: Uint8Array): Promise<TakenOver> {
  const read = readExport(bytes)
  if (!read.ok) throw new Refused(read.issues)
  const { head, entries, attachments } = read.contents
  // The files first: an entry must not name one that is not there.
  for (const { bytes, type } of attachments) await logbook.attach(bytes, type)
  const { workspace } = logbook
  const taken = await logbook.takeOver(entries.map((entry) => ({ ...entry, workspace })))
  const systems = [...new Set(entries.map(({ system }) => system))].sort()
  return { ...taken, madeAt: head.madeAt, systems, attachments: attachments.length, leftOut: head.leftOut }
}
