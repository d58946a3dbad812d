import { type Issue, Refused } from '@holdfast/logbook'
import { lastGoodBackup, restore } from '@holdfast/logbook/copies'

/**
 * Puts the last whole backup in the place of the log.
 *
 * @param databaseUrl  where a database server keeps the log, which has backups of its own
 * @returns what was done, in words
 * @throws Refused when there is none, or the log is in use
 */
export async function bringBack(
  folder: string,
  backups: string,
  databaseUrl: string | undefined,
): Promise<string> {
  if (databaseUrl) throw new Refused([onServer])
  const last = await lastGoodBackup(backups)
  if (last === undefined) throw new Refused([noneIn(backups)])
  const { entries, kept } = await restore({ folder, from: last.folder, now: new Date() })
  const before = kept === undefined ? '' : ` The log that was there is kept in ${kept}.`
  return `Restored ${entries} entries from ${last.folder}.${before}`
}

const onServer: Issue = {
  code: 'log-on-server',
  where: '--restore',
  got: 'the log is kept by the database server that DATABASE_URL names',
  accepted: 'A log in a data folder.',
  next: 'Use the backup of that server. Nothing was changed.',
}

const noneIn = (backups: string): Issue => ({
  code: 'no-backup',
  where: 'Backup',
  got: `there is no whole one in ${backups}`,
  accepted: 'A folder that Holdfast made as a backup.',
  next: 'Name the folder of your backups in HOLDFAST_BACKUPS. Nothing was changed.',
})
