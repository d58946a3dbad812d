import type { Appended, Logbook } from '../logbook.ts'
import type { ExportContents } from './read-export.ts'

/** What became of an export. */
export interface TakenOver extends Appended {
  /** Attachments that the log had lost before it was exported, by their SHA-256. */
  readonly leftOut: readonly string[]
}

/**
 * Stores all that an export holds: ids, order and times of receipt as they were, into the workspace of
 * this log. What is here already stays, so that taking the same export over twice changes nothing.
 *
 * @param contents  as `readExport` gives them
 * @throws Refused with all issues when an entry cannot be read; then none is stored
 */
export async function takeOverExport(logbook: Logbook, contents: ExportContents): Promise<TakenOver> {
  const { head, entries, attachments } = contents
  // The files first: an entry must not name one that is not there.
  for (const { bytes, type } of attachments) await logbook.attach(bytes, type)
  const { workspace } = logbook
  const taken = await logbook.takeOver(
    entries.map((entry) => (entry.workspace === workspace ? entry : { ...entry, workspace })),
  )
  return { ...taken, leftOut: head.leftOut }
}
