import { copyFile, link, mkdir, rm } from 'node:fs/promises'
import { join } from 'node:path'

import { syncFile, syncFolder } from '../sqlite/sync.ts'
import type { BackupFile } from './manifest.ts'
import { sumOfFile } from './sum-of-file.ts'

/** What became of the attachments that a log names. */
export interface CopiedAttachments {
  readonly files: readonly BackupFile[]
  /** Those of which there is no whole file, by their SHA-256. */
  readonly leftOut: readonly string[]
}

/**
 * Copies attachments, each checked by its name. One that is damaged or gone is left out and told of: the
 * rest must not go without a backup for it.
 *
 * @param earlier  folder of the backup before. An attachment never changes, so its copy is shared where
 *   the disk can do so: fourteen backups hold a photograph once.
 */
export async function copyAttachments(
  names: readonly string[],
  folder: string,
  backup: string,
  earlier: string | undefined,
): Promise<CopiedAttachments> {
  if (names.length === 0) return { files: [], leftOut: [] }
  await mkdir(join(backup, 'attachments'))
  const files: BackupFile[] = []
  const leftOut: string[] = []
  for (const sha256 of names) {
    const path = `attachments/${sha256}`
    const to = join(backup, path)
    const size =
      (earlier && (await placed(sha256, to, () => link(join(earlier, path), to)))) ??
      (await placed(sha256, to, () => copied(join(folder, path), to)))
    if (typeof size === 'number') files.push({ path, size, sha256 })
    else leftOut.push(sha256)
  }
  syncFolder(join(backup, 'attachments'))
  return { files, leftOut }
}

/** The size of the file in its place, or undefined where it could not be put there whole. */
async function placed(sha256: string, to: string, put: () => Promise<void>): Promise<number | undefined> {
  try {
    await put()
    const sum = await sumOfFile(to)
    if (sum.sha256 === sha256) return sum.size
  } catch (error) {
    if (hasNoRoom(error)) throw error
  }
  await rm(to, { force: true })
  return undefined
}

async function copied(from: string, to: string): Promise<void> {
  await copyFile(from, to)
  syncFile(to)
}

/** A full disk is no fault of the attachment: the whole backup fails by it. */
function hasNoRoom(error: unknown): boolean {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  return ['ENOSPC', 'EDQUOT', 'EFBIG', 'EROFS'].includes(code)
}
