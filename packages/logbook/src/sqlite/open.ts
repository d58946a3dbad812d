import { accessSync, constants, existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'libsql'

import type { Issue } from '../issue.ts'
import type { Logbook } from '../logbook.ts'
import { applicationId, migrate, migrations, pragmaNumber } from './migrations.ts'
import { type Clock, sqliteLogbook } from './sqlite-logbook.ts'

/** An open log, or why it cannot be opened. */
export type Opened =
  | { readonly ok: true; readonly logbook: Logbook; readonly file: string }
  | { readonly ok: false; readonly issues: readonly Issue[] }

/** Where and for whom the log is opened. */
export interface OpenOptions {
  readonly folder: string
  readonly workspace?: string
  /** The time of receipt; the machine's clock where left out. */
  readonly clock?: Clock
}

/**
 * Opens the log in `holdfast.db` of a folder, making both where missing. A second process may have it
 * open: each waits up to ten seconds for the other's write.
 */
export function openLogbook({ folder, workspace = 'home', clock = () => new Date() }: OpenOptions): Opened {
  const file = join(folder, 'holdfast.db')
  const folderIssue = makeWritable(folder, file)
  if (folderIssue) return { ok: false, issues: [folderIssue] }
  let database: Database.Database | undefined
  try {
    const opened = new Database(file)
    database = opened
    // Before all else: a second process may hold the lock while this one sets the journal.
    database.exec('PRAGMA busy_timeout = 10000')
    const foreign = asOneReader(database, () => issueOfContent(opened, file))
    if (foreign) {
      database.close()
      return { ok: false, issues: [foreign] }
    }
    database.prepare('PRAGMA journal_mode = WAL').get()
    database.exec('PRAGMA synchronous = FULL')
    migrate(database, (schema) => join(folder, `holdfast.before-schema-${schema + 1}.${Date.now()}.db`))
    return { ok: true, logbook: sqliteLogbook(database, workspace, clock), file }
  } catch (error) {
    database?.close()
    return { ok: false, issues: [issueOfError(error, file)] }
  }
}

/** Runs `read` on one state of the file: another program may be making its first schema meanwhile. */
function asOneReader<Result>(database: Database.Database, read: () => Result): Result {
  database.exec('BEGIN')
  try {
    return read()
  } finally {
    database.exec('COMMIT')
  }
}

function makeWritable(folder: string, file: string): Issue | undefined {
  try {
    mkdirSync(folder, { recursive: true })
    accessSync(folder, constants.W_OK)
    if (existsSync(file)) accessSync(file, constants.R_OK | constants.W_OK)
    return undefined
  } catch (error) {
    return {
      code: 'data-folder-not-writable',
      where: `Data folder ${folder}`,
      got: `the log cannot be written there (${reason(error)})`,
      accepted: 'A folder in which you may write.',
      next: 'Allow writing there, or name another folder in HOLDFAST_DATA.',
    }
  }
}

function issueOfContent(database: Database.Database, file: string): Issue | undefined {
  const schema = pragmaNumber(database, 'user_version')
  const mark = pragmaNumber(database, 'application_id')
  const tables = database.prepare('SELECT name FROM sqlite_schema LIMIT 1').all()
  if (tables.length > 0 && mark !== applicationId) {
    return {
      code: 'not-our-file',
      where: `Log ${file}`,
      got: 'the database there was made by another program',
      accepted: 'A log of Holdfast, or no file at all.',
      next: 'Move that file away, or name another folder in HOLDFAST_DATA. Nothing was changed.',
    }
  }
  if (schema > migrations.length) {
    return {
      code: 'newer-schema',
      where: `Log ${file}`,
      got: `it was written by a newer Holdfast (schema ${schema})`,
      accepted: `This one reads schema ${migrations.length} or older.`,
      next: 'Update this Holdfast. Nothing was changed.',
    }
  }
  // Damage inside pages shows only when they are read; a log is small enough to read at the start.
  const [check]: unknown[] = database.prepare('PRAGMA quick_check(1)').all()
  const verdict = typeof check === 'object' && check !== null ? String(Object.values(check)[0]) : ''
  return verdict === 'ok' ? undefined : damaged(file, verdict)
}

function issueOfError(error: unknown, file: string): Issue {
  const code = error instanceof Database.SqliteError ? error.code : ''
  if (code === 'SQLITE_NOTADB' || code.startsWith('SQLITE_CORRUPT')) return damaged(file, reason(error))
  return {
    code: 'log-not-opened',
    where: `Log ${file}`,
    got: `it cannot be opened (${reason(error)})`,
    accepted: 'A log that no other program has locked, on a disk with room.',
    next: 'Close the other program or free some room, then start again. Nothing was changed.',
  }
}

function damaged(file: string, why: string): Issue {
  return {
    code: 'damaged-file',
    where: `Log ${file}`,
    got: `it is damaged or no log (${why})`,
    accepted: 'A log as this program wrote it.',
    next: 'Put your last backup in its place and keep the damaged file. Nothing was changed.',
  }
}

const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error))
