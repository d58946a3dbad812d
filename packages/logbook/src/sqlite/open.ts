import { accessSync, constants, existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import Database from 'libsql'

import type { Issue } from '../issue.ts'
import type { Clock, Opened } from '../logbook.ts'
import { AttachmentFiles } from './attachment-files.ts'
import { issueOfContent } from './content.ts'
import { damaged, notOpened, reason } from './faults.ts'
import { migrate } from './migrations.ts'
import { patiently } from './patiently.ts'
import { sqliteLogbook } from './sqlite-logbook.ts'

/** Where and for whom the log is opened. */
export interface OpenOptions {
  readonly folder: string
  readonly workspace?: string
  /** The time of receipt; the machine's clock where left out. */
  readonly clock?: Clock
  /** How long to wait for another program's write, in milliseconds. */
  readonly patience?: number
}

/** An open log in its file, or why it cannot be opened. */
export type OpenedFile = Opened & ({ readonly ok: false } | { readonly file: string })

/**
 * Opens the log in `holdfast.db` of a folder, making both where missing, and reads the whole of it once
 * for damage. A second process may have it open: each waits for the other's write.
 */
export function openLogbook(options: OpenOptions): OpenedFile {
  const { folder, workspace = 'home', clock = () => new Date(), patience = 10_000 } = options
  const file = join(folder, 'holdfast.db')
  const folderIssue = makeWritable(folder, file)
  if (folderIssue) return { ok: false, issues: [folderIssue] }
  const besides = join(folder, 'attachments')
  // The folder is made after the file has its tables, so beside it an empty file is one that was cut off.
  const mayBeEmpty = !existsSync(file) || !existsSync(besides)
  let database: Database.Database | undefined
  try {
    const opened = new Database(file)
    database = opened
    // Before all else: a second process may hold the lock while this one sets the journal.
    opened.exec(`PRAGMA busy_timeout = ${patience}`)
    const issue = patiently(patience, () => issueOfContent(opened, file, mayBeEmpty))
    if (issue) {
      opened.close()
      return { ok: false, issues: [issue] }
    }
    // Two that change the journal at once are told at once that it is busy, whatever the timeout.
    patiently(patience, () => opened.exec('PRAGMA journal_mode = WAL'))
    opened.exec('PRAGMA synchronous = FULL')
    migrate(opened, (schema) => join(folder, `holdfast.before-schema-${schema + 1}.${Date.now()}.db`))
    const attachments = new AttachmentFiles(besides)
    const logbook = sqliteLogbook({ database: opened, attachments, patience }, workspace, clock)
    return { ok: true, logbook, kept: `on this machine, in ${file}`, file }
  } catch (error) {
    database?.close()
    return { ok: false, issues: [issueOfError(error, file)] }
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

function issueOfError(error: unknown, file: string): Issue {
  const code = error instanceof Database.SqliteError ? error.code : ''
  if (code === 'SQLITE_NOTADB' || code.startsWith('SQLITE_CORRUPT')) return damaged(file, reason(error))
  return notOpened(file, reason(error))
}
