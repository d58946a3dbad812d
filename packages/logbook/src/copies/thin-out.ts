import { existsSync } from 'node:fs'
import { readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'

import { backupsIn } from './backups-in.ts'
import { manifestName } from './manifest.ts'

/** What is kept of the backups in a folder. */
export interface Keeping {
  /** How many backups of the schedule stay, the newest ones. */
  readonly keep: number
  readonly now: Date
}

/**
 * Removes the oldest backups of the schedule; those made by hand stay. What was cut off more than a day
 * ago, and so is no backup, goes too.
 *
 * @returns the folders removed
 */
export async function thinOut(to: string, { keep, now }: Keeping): Promise<readonly string[]> {
  const daily = (await backupsIn(to)).filter(({ manifest }) => manifest.made === 'daily')
  const old = daily.slice(0, Math.max(0, daily.length - keep)).map(({ folder }) => folder)
  // The manifest first: what is half removed must not be taken for a backup.
  for (const folder of old) await rm(join(folder, manifestName))
  const gone = [...old, ...(await cutOff(to, now))]
  for (const folder of gone) await rm(folder, { recursive: true, force: true })
  return gone
}

async function cutOff(to: string, now: Date): Promise<string[]> {
  const found: string[] = []
  for (const name of await readdir(to).catch(() => [])) {
    const folder = join(to, name)
    if (!/^holdfast-\d{4}-\d{2}-\d{2}T\d{2}-\d{2}-\d{2}(-\d+)?$/.test(name)) continue
    if (existsSync(join(folder, manifestName))) continue
    const { mtimeMs } = await stat(folder)
    if (now.getTime() - mtimeMs > 86_400_000) found.push(folder)
  }
  return found
}
