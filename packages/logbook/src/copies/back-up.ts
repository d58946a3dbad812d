import { existsSync } from 'node:fs'
import { mkdir, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

import { type Issue, Refused } from '../issue.ts'
import { copyLog } from '../sqlite/copy-log.ts'
import { type Inspected, inspectLog } from '../sqlite/inspect-log.ts'
import { syncFile, syncFolder } from '../sqlite/sync.ts'
import { type Backup, backupsIn } from './backups-in.ts'
import { copyAttachments } from './copy-attachments.ts'
import { inName } from './in-name.ts'
import { type Manifest, manifestName, sealed } from './manifest.ts'
import { sumOfFile } from './sum-of-file.ts'

/** What is copied, and where to. */
export interface BackUpOptions {
  /** The data folder, whose log may be open here and elsewhere. */
  readonly folder: string
  /** The folder of the backups; made where missing. */
  readonly to: string
  readonly now: Date
  readonly made: Manifest['made']
}

/**
 * Copies the log as it is at one moment, and its attachments, into a new folder of `to`, and reads the
 * copy back. The manifest is the last name written: until then the folder counts for nothing.
 *
 * @throws Refused when there is no room, or the log is damaged; then nothing is left of the copy
 */
export async function backUp(options: BackUpOptions): Promise<Backup> {
  const { folder: data, to, now } = options
  if (!existsSync(join(data, 'holdfast.db'))) throw noLog(data)
  const earlier = await backupsIn(to).catch(() => [])
  const folder = await newFolder(to, now)
  try {
    const manifest = await fill(folder, options, earlier.at(-1)?.folder)
    syncFolder(to)
    return { folder, manifest }
  } catch (error) {
    await rm(folder, { recursive: true, force: true })
    throw error instanceof Refused ? error : notMade(to, error)
  }
}

async function fill(
  backup: string,
  { folder, now, made }: BackUpOptions,
  earlier: string | undefined,
): Promise<Manifest> {
  const log = join(backup, 'holdfast.db')
  const { schema, entries, attachments } = copied(join(folder, 'holdfast.db'), log)
  const { files, leftOut } = await copyAttachments(attachments, folder, backup, earlier)
  const ofLog = { path: 'holdfast.db', ...(await sumOfFile(log)) }
  const manifest = sealed({
    madeAt: now.toISOString(),
    made,
    schema,
    entries,
    files: [ofLog, ...files],
    leftOut,
  })
  const unfinished = join(backup, `${manifestName}.unfinished`)
  await writeFile(unfinished, `${JSON.stringify(manifest, null, 2)}\n`)
  syncFile(unfinished)
  syncFolder(backup)
  await rename(unfinished, join(backup, manifestName))
  syncFolder(backup)
  return manifest
}

/** Copies the log and reads the copy. @throws Refused when either shows that the log is damaged */
function copied(log: string, to: string): Inspected & { readonly ok: true } {
  try {
    copyLog(log, to)
  } catch (error) {
    const inspected = inspectLog(log)
    throw inspected.ok ? error : damagedLog(log, inspected.issue)
  }
  const inspected = inspectLog(to)
  if (!inspected.ok) throw damagedLog(log, inspected.issue)
  return inspected
}

/** A folder named after the moment, which sorts by it and is a name on every platform. */
async function newFolder(to: string, now: Date): Promise<string> {
  const name = `holdfast-${inName(now)}`
  try {
    await mkdir(to, { recursive: true })
    for (let count = 1; ; count++) {
      const folder = join(to, count === 1 ? name : `${name}-${count}`)
      const made = await mkdir(folder).then(
        () => true,
        (error: NodeJS.ErrnoException) => {
          if (error.code === 'EEXIST') return false
          throw error
        },
      )
      if (made) return folder
    }
  } catch (error) {
    throw notMade(to, error)
  }
}

function damagedLog(log: string, issue: Issue): Refused {
  const next =
    'No backup was made. "holdfast restore --last" brings the last whole one back and keeps this log.'
  return new Refused([{ ...issue, where: `Log ${log}`, next }])
}

function noLog(folder: string): Refused {
  return new Refused([
    {
      code: 'no-log',
      where: `Data folder ${folder}`,
      got: 'there is no log in it',
      accepted: 'The folder that Holdfast names when it starts.',
      next: 'Name it with --data or in HOLDFAST_DATA.',
    },
  ])
}

function notMade(to: string, error: unknown): Refused {
  return new Refused([
    {
      code: 'backup-not-made',
      where: `Backup in ${to}`,
      got: `it could not be written (${error instanceof Error ? error.message : error})`,
      accepted: 'A folder in which you may write, on a disk with room for one more copy.',
      next: 'Free some room or name another folder. The log and earlier backups are as they were.',
    },
  ])
}
