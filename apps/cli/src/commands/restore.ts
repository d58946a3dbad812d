import { backupsIn, backupsOf, checkBackup, lastGoodBackup, restore } from '@holdfast/logbook/copies'
import { folderOf, type Where } from '../open-log.ts'
import { refuse } from '../refuse.ts'
import { refuseOnServer } from '../refuse-on-server.ts'
import { table } from '../table.ts'
import type { Terminal } from '../terminal.ts'

export interface RestoreOptions extends Where {
  readonly last?: true
  readonly json?: true
}

/**
 * Puts a backup in the place of the log, which is kept; without a backup named, lists those there are.
 *
 * @param from  folder of a backup, or a log that an earlier restore kept
 */
export async function restoreCommand(
  from: string | undefined,
  options: RestoreOptions,
  terminal: Terminal,
): Promise<void> {
  refuseOnServer('Restore', options)
  const folder = folderOf(options)
  const backups = backupsOf(folder, process.env)
  const chosen = from ?? (options.last ? await lastGood(backups) : undefined)
  if (chosen === undefined) return list(backups, options, terminal)
  const { entries, kept } = await restore({ folder, from: chosen, now: new Date() })
  const undo =
    kept === undefined ? [] : [`The log that was there is kept. To undo: holdfast restore "${kept}"`]
  terminal.out(
    options.json
      ? JSON.stringify({ restored: chosen, entries, kept: kept ?? null })
      : [`Restored ${entries} entries from ${chosen}.`, ...undo].join('\n'),
  )
}

async function lastGood(backups: string): Promise<string> {
  const last = await lastGoodBackup(backups)
  if (last !== undefined) return last.folder
  throw refuse(
    'no-backup',
    'Backup',
    `there is no whole one in ${backups}`,
    'A folder that "holdfast backup" made.',
    'Name one: holdfast restore FOLDER. Nothing was changed.',
  )
}

async function list(backups: string, { json }: RestoreOptions, terminal: Terminal): Promise<void> {
  const found = await Promise.all(
    (await backupsIn(backups)).map(async ({ folder, manifest: { madeAt, made, entries } }) => ({
      backup: folder,
      made_at: madeAt,
      made,
      entries,
      whole: (await checkBackup(folder)).ok,
    })),
  )
  if (json) terminal.out(JSON.stringify(found, null, 2))
  else if (found.length === 0) terminal.out(`There is no backup in ${backups} yet. Make one: holdfast backup`)
  else
    terminal.out(
      [
        table(
          [
            { heading: 'Backup' },
            { heading: 'Made' },
            { heading: 'Entries', stands: 'right' },
            { heading: 'Whole' },
          ],
          found.map((one) => [one.backup, one.made, String(one.entries), one.whole ? 'yes' : 'no, damaged']),
        ),
        'To bring one back: holdfast restore BACKUP, or the newest whole one: holdfast restore --last',
      ].join('\n\n'),
    )
}
