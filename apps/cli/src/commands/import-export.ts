import { Refused } from '@holdfast/logbook'
import { type ExportContents, readExport, type TakenOver, takeOverExport } from '@holdfast/logbook/export'
import { type Where, withLog } from '../open-log.ts'
import type { Terminal } from '../terminal.ts'

export interface ImportExportOptions extends Where {
  readonly preview?: true
  readonly yes?: true
  readonly json?: true
}

/**
 * Takes over what "holdfast export" wrote on another machine: the same log, to the last entry.
 *
 * @returns 2 where nobody agreed, 0 otherwise
 */
export async function importExport(
  bytes: Uint8Array,
  options: ImportExportOptions,
  terminal: Terminal,
): Promise<0 | 2> {
  const read = readExport(bytes)
  if (!read.ok) throw new Refused(read.issues)
  const { contents } = read
  if (!options.json) terminal.out(foundInWords(contents))
  const agreed = options.preview
    ? false
    : (options.yes ?? (await terminal.agrees('Store what is new of it?')))
  const taken = agreed ? await withLog(options, (logbook) => takeOverExport(logbook, contents)) : undefined
  const outcome = taken ? 'stored' : options.preview ? 'preview' : 'not agreed'
  if (options.json) terminal.out(JSON.stringify(asJson(contents, taken, outcome), null, 2))
  else if (taken) terminal.out(takenInWords(taken).join('\n'))
  else if (options.preview) terminal.out('This was a preview. Nothing is stored.')
  else terminal.out('Nothing is stored. Say --yes to store.')
  return outcome === 'not agreed' ? 2 : 0
}

const systemsOf = ({ entries }: ExportContents): string[] =>
  [...new Set(entries.map(({ system }) => system))].sort()

function foundInWords(contents: ExportContents): string {
  const { head, entries, attachments } = contents
  const systems = systemsOf(contents).join(', ') || 'no system'
  return `An export of ${head.madeAt.slice(0, 10)}, whole: ${entries.length} entries of ${systems}, ${attachments.length} attachments.`
}

function takenInWords({ added, already, differing, leftOut }: TakenOver): string[] {
  return [
    `Stored ${added.length} entries; ${already.length} were in the log already.`,
    ...(differing.length > 0
      ? [
          `${differing.length} of those say something else here, and what was here stays: ${differing.join(', ')}`,
        ]
      : []),
    ...leftOut.map((sha256) => `Attachment ${sha256} was lost before the export was made.`),
  ]
}

function asJson(contents: ExportContents, taken: TakenOver | undefined, outcome: string): unknown {
  const { head, entries, attachments } = contents
  return {
    made_at: head.madeAt,
    systems: systemsOf(contents),
    entries: entries.length,
    attachments: attachments.length,
    left_out: head.leftOut,
    outcome,
    added: taken?.added.length ?? 0,
    already: taken?.already.length ?? 0,
    differing: taken?.differing ?? [],
  }
}
