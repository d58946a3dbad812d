import { readdir } from 'node:fs/promises'
import { join } from 'node:path'

import { checkBackup, manifestOf } from './check-backup.ts'
import type { Manifest } from './manifest.ts'

/** A backup, and what its manifest says. */
export interface Backup {
  readonly folder: string
  readonly manifest: Manifest
}

/** Where the backups of a data folder lie: beside the log, unless HOLDFAST_BACKUPS names a place. */
export function backupsOf(folder: string, env: Readonly<Record<string, string | undefined>>): string {
  return env.HOLDFAST_BACKUPS || join(folder, 'backups')
}

/** The backups of a folder by their manifests, oldest first; one that was cut off is none. */
export async function backupsIn(to: string): Promise<readonly Backup[]> {
  const found: Backup[] = []
  for (const name of await readdir(to).catch(() => [])) {
    const folder = join(to, name)
    const read = await manifestOf(folder)
    if (read.ok) found.push({ folder, manifest: read.manifest })
  }
  return found.sort((a, b) => (a.manifest.madeAt < b.manifest.madeAt ? -1 : 1))
}

/** The newest backup of which every byte is as it was written. */
export async function lastGoodBackup(to: string): Promise<Backup | undefined> {
  for (const backup of (await backupsIn(to)).toReversed()) {
    if ((await checkBackup(backup.folder)).ok) return backup
  }
  return undefined
}
