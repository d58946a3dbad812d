import { existsSync } from 'node:fs'
import Database from 'libsql'

import type { Issue } from '../issue.ts'
import { issueOfContent } from './content.ts'
import { damaged, notOpened, reason } from './faults.ts'
import { pragmaNumber } from './migrations.ts'

/** What a file holds that was read whole and found to be a log, or why it is none. */
export type Inspected =
  | {
      readonly ok: true
      readonly schema: number
      readonly entries: number
      /** SHA-256 of each file that the log names, in order. */
      readonly attachments: readonly string[]
    }
  | { readonly ok: false; readonly issue: Issue }

/** Reads the whole of a log that lies somewhere, such as a copy, and changes nothing. */
export function inspectLog(file: string): Inspected {
  // The engine would make a file that is missing.
  if (!existsSync(file)) return { ok: false, issue: notOpened(file, 'there is no such file') }
  let database: Database.Database | undefined
  try {
    const opened = new Database(file, { readonly: true })
    database = opened
    const issue = issueOfContent(opened, file)
    if (issue !== undefined) return { ok: false, issue }
    const schema = pragmaNumber(opened, 'user_version')
    if (schema === 0) return { ok: false, issue: damaged(file, 'it is empty') }
    const { entries } = opened.prepare('SELECT count(*) AS entries FROM entry').get() as { entries: number }
    return { ok: true, schema, entries, attachments: schema < 2 ? [] : attachmentsOf(opened) }
  } catch (error) {
    return { ok: false, issue: damaged(file, reason(error)) }
  } finally {
    database?.close()
  }
}

function attachmentsOf(database: Database.Database): string[] {
  const named = database.prepare('SELECT DISTINCT sha256 FROM attachment ORDER BY sha256').all()
  return (named as { sha256: string }[]).map(({ sha256 }) => sha256)
}
