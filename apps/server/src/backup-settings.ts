import { backupsOf } from '@holdfast/logbook/copies'
import type { Surroundings } from '@holdfast/logbook/sqlite'

/** How many daily backups are kept where the keeper says nothing: two weeks to notice what went wrong. */
const usualKeep = 14

/** Where backups of a data folder go, and how many daily ones stay; 0 makes none. */
export interface BackupSettings {
  readonly to: string
  readonly keep: number
}

/** Reads HOLDFAST_BACKUPS and HOLDFAST_BACKUPS_KEEP. @returns words where they cannot be understood */
export function backupSettings(folder: string, env: Surroundings['env']): BackupSettings | string {
  const said = env.HOLDFAST_BACKUPS_KEEP || String(usualKeep)
  if (!/^\d{1,4}$/.test(said))
    return `HOLDFAST_BACKUPS_KEEP: "${said}" is no count of days. Give a whole number, such as ${usualKeep}, or 0 for no daily backups.`
  return { to: backupsOf(folder, env), keep: Number(said) }
}
