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
    if (ofBatch.length === 0) {
      const known = [...new Set(stored.flatMap((entry) => entry.batch ?? []))]
      const accepted = known.length > 0 ? `Imports: ${known.join(', ')}.` : 'There was no import yet.'
      throw refuse('no-import', 'Import', `"${batch}" is not in this log`, accepted, 'Nothing was changed.')
    }
    const now = new Date()
    const at = now.toISOString().slice(0, 10)
    const { workspace } = logbook
    const about = {
      workspace,
      kind: 'retraction',
      at,
      precision: 'day',
      body: { of: 'batch', id: batch },
    } as const
    // Systems are read apart, so each needs a retraction of its own.
    const standsIn = new Map(
      [...new Set(ofBatch.map(({ system }) => system))].map((system) => {
        const held = standing(stored.filter((entry) => entry.system === system))
        return [system, held.filter((entry) => entry.batch === batch).length] as const
      }),
    )
    const holding = [...standsIn].filter(([, count]) => count > 0)
    await logbook.append(holding.map(([system]) => composeEntry({ ...about, system, ...writer }, now)))
    const before = holding.reduce((sum, [, count]) => sum + count, 0)
    const words = before > 0 ? `Took back ${before} entries of ${batch}.` : `${batch} was taken back before.`
    terminal.out(options.json ? JSON.stringify({ batch, taken_back: before }) : words)
  })
}
