import { backUp, backupsOf } from '@holdfast/logbook/copies'
import { folderOf, type Where } from '../open-log.ts'
import { refuseOnServer } from '../refuse-on-server.ts'
import type { Terminal } from '../terminal.ts'

/** Copies the log and its attachments as they are now; programs that use the log go on. */
export async function backupCommand(
  options: Where & { readonly to?: string; readonly json?: true },
  terminal: Terminal,
): Promise<void> {
  refuseOnServer('Backup', options)
  const folder = folderOf(options)
  const to = options.to ?? backupsOf(folder, process.env)
  const { folder: made, manifest } = await backUp({ folder, to, now: new Date(), made: 'by hand' })
  const { entries, files, leftOut } = manifest
  const bytes = files.reduce((sum, { size }) => sum + size, 0)
  if (options.json) {
    terminal.out(
      JSON.stringify({ backup: made, entries, attachments: files.length - 1, left_out: leftOut, bytes }),
    )
    return
  }
  terminal.out(
    [
      `Backed up ${entries} entries and ${files.length - 1} attachments, ${megabytes(bytes)}, and read them back:`,
      `  ${made}`,
      ...leftOut.map((sha256) => `Attachment ${sha256} is damaged or gone and is not in it.`),
      `To bring it back: holdfast restore "${made}"`,
    ].join('\n'),
  )
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`
