import { composeEntry, standing } from '@holdfast/logbook'
import { type Where, withLog } from '../open-log.ts'
import { refuse } from '../refuse.ts'
import type { Terminal } from '../terminal.ts'
import { writer } from '../writer.ts'

/** Takes an import back as a whole; nothing is deleted, and the sheet can be imported again. */
export async function undoImport(
  batch: string,
  options: Where & { readonly json?: true },
  terminal: Terminal,
): Promise<void> {
  await withLog(options, async (logbook) => {
    const stored = await logbook.read()
    const ofBatch = stored.filter((entry) => entry.batch === batch)
    const [first] = ofBatch
    if (first === undefined) {
      const known = [...new Set(stored.flatMap((entry) => entry.batch ?? []))]
      const accepted = known.length > 0 ? `Imports: ${known.join(', ')}.` : 'There was no import yet.'
      throw refuse('no-import', 'Import', `"${batch}" is not in this log`, accepted, 'Nothing was changed.')
    }
    const before = standing(stored).filter((entry) => entry.batch === batch).length
    const now = new Date()
    const at = now.toISOString().slice(0, 10)
    const body = { of: 'batch', id: batch } as const
    if (before > 0) {
      const { workspace } = logbook
      const about = {
        workspace,
        system: first.system,
        kind: 'retraction',
        at,
        precision: 'day',
        body,
      } as const
      await logbook.append([composeEntry({ ...about, ...writer }, now)])
    }
    const words = before > 0 ? `Took back ${before} entries of ${batch}.` : `${batch} was taken back before.`
    terminal.out(options.json ? JSON.stringify({ batch, taken_back: before }) : words)
  })
}
