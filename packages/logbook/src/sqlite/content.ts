import type Database from 'libsql'

import type { Issue } from '../issue.ts'
import { sealed } from '../storage/seal.ts'
import { sha256 } from '../storage/sha256.ts'
import { damaged } from './faults.ts'
import { applicationId, migrations, pragmaNumber } from './migrations.ts'

/** Why the file cannot be our log, all of it read at one state; undefined where it is one or may be new. */
export function issueOfContent(
  database: Database.Database,
  file: string,
  mayBeEmpty = false,
): Issue | undefined {
  // One state: another program may be making its first schema meanwhile.
  database.exec('BEGIN')
  try {
    return issueOfMarks(database, file, mayBeEmpty) ?? issueOfPages(database, file)
  } finally {
    database.exec('COMMIT')
  }
}

function issueOfMarks(database: Database.Database, file: string, mayBeEmpty: boolean): Issue | undefined {
  const schema = pragmaNumber(database, 'user_version')
  const mark = pragmaNumber(database, 'application_id')
  const isEmpty = database.prepare('SELECT 1 FROM sqlite_schema LIMIT 1').all().length === 0
  if (isEmpty && !mayBeEmpty) return damaged(file, 'it is empty')
  if (!isEmpty && mark !== applicationId) {
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
  return isEmpty === (schema === 0) ? undefined : damaged(file, `schema ${schema} is not what it holds`)
}

/**
 * Damage inside pages shows only when they are read; a log is small enough to read at the start. The
 * engine's check compares the pages and the indices, the seals what is written in them: 0.7 s in all
 * for 100,000 entries.
 *
 * Texts come as bytes: of one that is no UTF-8 any more the driver would end the program.
 */
function issueOfPages(database: Database.Database, file: string): Issue | undefined {
  const verdict = bytesOf(database, 'SELECT CAST(integrity_check AS BLOB) FROM pragma_integrity_check(1)')
  const said = verdict.next().value?.[0]?.toString() ?? 'no answer'
  if (said !== 'ok') return damaged(file, said)
  if (pragmaNumber(database, 'user_version') < migrations.length) return undefined
  for (const [table, columns] of Object.entries(sealed)) {
    const whole = columns.map((column) => `coalesce(${column}, '')`).join(' || char(10) || ')
    const rows = `SELECT CAST(${whole} AS BLOB), CAST(seal AS BLOB) FROM ${table}`
    for (const [row, seal] of bytesOf(database, rows)) {
      if (sha256(row) !== seal.toString()) return damaged(file, `one ${table} is not as it was written`)
    }
  }
  return undefined
}

function bytesOf(database: Database.Database, statement: string): IterableIterator<readonly Buffer[]> {
  return database.prepare(statement).raw().iterate() as IterableIterator<readonly Buffer[]>
}
