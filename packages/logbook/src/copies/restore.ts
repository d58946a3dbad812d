import { existsSync } from 'node:fs'
import { copyFile, link, mkdir, readFile, rename, rm, stat } from 'node:fs/promises'
import { basename, join } from 'node:path'

import { type Issue, Refused } from '../issue.ts'
import { AttachmentFiles } from '../sqlite/attachment-files.ts'
import { foldIntoOneFile } from '../sqlite/copy-log.ts'
import { inspectLog } from '../sqlite/inspect-log.ts'
import { runningOn } from '../sqlite/running.ts'
import { syncFile, syncFolder } from '../sqlite/sync.ts'
import { checkBackup } from './check-backup.ts'
import { inName } from './in-name.ts'
import { sumOfFile } from './sum-of-file.ts'

/** What takes the place of what. */
export interface RestoreOptions {
  /** The data folder; made where missing. */
  readonly folder: string
  /** A backup's folder, or a log that an earlier restore kept beside. */
  readonly from: string
  readonly now: Date
}

/** What is in its place now. */
export interface Restored {
  readonly entries: number
  /** The log that was there before, as a file to restore from; undefined where there was none. */
  readonly kept?: string
}

/** The backup's log, and the attachments to go with it. */
interface Source {
  readonly log: string
  readonly sha256: string
  readonly entries: number
  readonly attachments: readonly string[]
}

/**
 * Puts a backup in the place of the log, which is kept beside it. Until the last step, one rename, the
 * present log is in its place, so that a cut-off restore has changed nothing.
 *
 * @throws Refused when the backup is not whole, while the log is in use, or when there is no room
 */
export async function restore({ folder, from, now }: RestoreOptions): Promise<Restored> {
  const source = await sourceOf(from)
  const port = await runningOn(folder)
  if (port !== undefined) throw inUse(folder, `Holdfast runs on it, at http://localhost:${port}`)
  const log = join(folder, 'holdfast.db')
  const unfinished = join(folder, `holdfast.restoring.${process.pid}.db`)
  try {
    await mkdir(folder, { recursive: true })
    await copyFile(source.log, unfinished)
    syncFile(unfinished)
    if ((await sumOfFile(unfinished)).sha256 !== source.sha256) throw new Error('the copy differs')
    await bringAttachments(source.attachments, folder)
    const kept = existsSync(log) ? await keep(folder, log, now) : undefined
    await rename(unfinished, log)
    syncFolder(folder)
    return { entries: source.entries, ...(kept !== undefined && { kept }) }
  } catch (error) {
    await rm(unfinished, { force: true })
    throw error instanceof Refused ? error : notRestored(folder, error)
  }
}

/** The whole of what is to be restored, checked. */
async function sourceOf(from: string): Promise<Source> {
  const isFile = await stat(from).then(
    (found) => found.isFile(),
    () => false,
  )
  if (isFile) {
    const inspected = inspectLog(from)
    if (!inspected.ok) throw new Refused([inspected.issue])
    return { log: from, ...(await sumOfFile(from)), entries: inspected.entries, attachments: [] }
  }
  const checked = await checkBackup(from)
  if (!checked.ok) throw new Refused(checked.issues)
  const [log, ...attachments] = checked.manifest.files
  return {
    log: join(from, log.path),
    sha256: log.sha256,
    entries: checked.manifest.entries,
    attachments: attachments.map(({ path }) => join(from, path)),
  }
}

/** Attachments are named by what they hold, so bringing one can only mend what is there. */
async function bringAttachments(files: readonly string[], folder: string): Promise<void> {
  const to = join(folder, 'attachments')
  const present = new AttachmentFiles(to)
  for (const file of files) {
    const name = basename(file)
    const sum = await sumOfFile(join(to, name)).catch(() => undefined)
    if (sum?.sha256 !== name) present.put(name, await readFile(file))
  }
}

/**
 * Gives the present log a second name, under which it stays when the first is given away.
 *
 * @returns that name
 */
async function keep(folder: string, log: string, now: Date): Promise<string> {
  const kept = freeName(join(folder, `holdfast.before-restore.${inName(now)}`))
  // The journal first: the engine throws away that of a log which was cut off to nothing.
  if (existsSync(`${log}-wal`)) await secondName(`${log}-wal`, `${kept}-wal`)
  const state = foldedState(log)
  if (state !== 'damaged') await rm(`${kept}-wal`, { force: true })
  if (state === 'in use') throw inUse(folder, 'another program has its log open')
  await secondName(log, kept)
  syncFolder(folder)
  // The new log must not find the journal of the old one.
  for (const beside of ['-wal', '-shm']) await rm(`${log}${beside}`, { force: true })
  return kept
}

/** Two restores of one second have names of their own. */
function freeName(start: string): string {
  for (let count = 1; ; count++) {
    const name = count === 1 ? `${start}.db` : `${start}-${count}.db`
    if (!existsSync(name) && !existsSync(`${name}-wal`)) return name
  }
}

function foldedState(log: string): 'one file' | 'in use' | 'damaged' {
  try {
    return foldIntoOneFile(log) ? 'one file' : 'in use'
  } catch {
    return 'damaged'
  }
}

/** Not every disk gives a file two names; there it is copied. */
async function secondName(file: string, name: string): Promise<void> {
  try {
    await link(file, name)
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') throw error
    await copyFile(file, name)
    syncFile(name)
  }
}

function inUse(folder: string, got: string): Refused {
  return refused({
    code: 'log-in-use',
    where: `Data folder ${folder}`,
    got,
    accepted: 'A data folder that no program uses.',
    next: 'Close it there, then restore again. Nothing was changed.',
  })
}

function notRestored(folder: string, error: unknown): Refused {
  return refused({
    code: 'not-restored',
    where: `Data folder ${folder}`,
    got: `the backup could not be put there (${error instanceof Error ? error.message : error})`,
    accepted: 'A folder in which you may write, on a disk with room for a second log.',
    next: 'Free some room, then restore again. The log is as it was.',
  })
}

const refused = (issue: Issue): Refused => new Refused([issue])
