import { readFile } from 'node:fs/promises'
import { join } from 'node:path'

import type { Issue } from '../issue.ts'
import { migrations } from '../sqlite/migrations.ts'
import { type BackupFile, type Manifest, manifestName, readManifest } from './manifest.ts'
import { sumOfFile } from './sum-of-file.ts'

/** A backup that is whole, or all that is wrong with it. */
export type Checked =
  | { readonly ok: true; readonly manifest: Manifest }
  | { readonly ok: false; readonly issues: readonly Issue[] }

/** Reads every file of a backup and compares it with the manifest. */
export async function checkBackup(folder: string): Promise<Checked> {
  const read = await manifestOf(folder)
  if (!read.ok) return { ok: false, issues: [read.issue] }
  const { files, schema } = read.manifest
  const issues: Issue[] = []
  if (schema > migrations.length) {
    issues.push({
      code: 'newer-schema',
      where: `Backup ${folder}`,
      got: `its log was written by a newer Holdfast (schema ${schema})`,
      accepted: `This one reads schema ${migrations.length} or older.`,
      next: 'Update this Holdfast. Nothing was changed.',
    })
  }
  for (const file of files) {
    const fault = await faultOf(folder, file)
    if (fault === undefined) continue
    issues.push({
      code: 'damaged-backup',
      where: `Backup ${folder}`,
      got: `${file.path} ${fault}`,
      accepted: 'A backup as it was made.',
      next: 'Choose another backup. Nothing was changed.',
    })
  }
  return issues.length === 0 ? read : { ok: false, issues }
}

/** The manifest alone, for a list of backups. */
export async function manifestOf(folder: string): Promise<ReturnType<typeof readManifest>> {
  const where = `Backup ${folder}`
  try {
    return readManifest(await readFile(join(folder, manifestName), 'utf8'), where)
  } catch {
    const got = `there is no ${manifestName} in it: it is no backup, or one that was cut off`
    const next = 'Choose another; "holdfast restore" lists those there are.'
    return {
      ok: false,
      issue: { code: 'no-backup', where, got, accepted: 'A folder that "holdfast backup" made.', next },
    }
  }
}

async function faultOf(folder: string, { path, size, sha256 }: BackupFile): Promise<string | undefined> {
  try {
    const found = await sumOfFile(join(folder, path))
    if (found.size !== size) return `has ${found.size} bytes instead of ${size}`
    return found.sha256 === sha256 ? undefined : 'is not as it was written'
  } catch {
    return 'is missing or cannot be read'
  }
}
