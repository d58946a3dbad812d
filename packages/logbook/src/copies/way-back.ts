import type { Issue } from '../issue.ts'
import { lastGoodBackup } from './backups-in.ts'

/**
 * Issues of a log that did not open, where a damaged one names the last whole backup and the command
 * that brings it back.
 *
 * @param backups  the folder of the backups
 * @param command  what to type, such as "holdfast restore --last"
 */
export async function wayBack(
  issues: readonly Issue[],
  backups: string,
  command: string,
): Promise<readonly Issue[]> {
  if (!issues.some(isDamage)) return issues
  const last = await lastGoodBackup(backups)
  const next =
    last === undefined
      ? `There is no whole backup in ${backups}. Keep the file as it is: much of it may be read by hand. Nothing was changed.`
      : `The last whole backup is of ${inMinutes(last.manifest.madeAt)}, with ${last.manifest.entries} entries. "${command}" brings it back and keeps the damaged log beside it. Nothing was changed.`
  return issues.map((issue) => (isDamage(issue) ? { ...issue, next } : issue))
}

const isDamage = ({ code }: Issue): boolean => code === 'damaged-file'

const inMinutes = (instant: string): string => `${instant.slice(0, 16).replace('T', ' ')} UTC`
