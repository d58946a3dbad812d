import type Database from 'libsql'

import { inTransaction } from './queries.ts'

/** Marks the file as ours: "Hold" in ASCII. */
export const applicationId = 0x486f6c64

/**
 * Statements that lead from schema n (the place in the list) to n + 1. Forward only: a released one is
 * never changed.
 */
export const migrations: readonly string[] = [
  `CREATE TABLE entry (
     workspace TEXT NOT NULL,
     id TEXT NOT NULL,
     receipt INTEGER NOT NULL,
     system TEXT NOT NULL,
     kind TEXT NOT NULL,
     day TEXT NOT NULL,
     known_at TEXT NOT NULL,
     document TEXT NOT NULL,
     PRIMARY KEY (workspace, id)
   ) STRICT, WITHOUT ROWID;
   CREATE UNIQUE INDEX entry_by_receipt ON entry (workspace, receipt);
   CREATE INDEX entry_by_system ON entry (workspace, system, kind, day);`,
]

/** One number that a PRAGMA answers. */
export function pragmaNumber(database: Database.Database, name: string): number {
  const [row]: unknown[] = database.prepare(`PRAGMA ${name}`).all()
  return typeof row === 'object' && row !== null ? Number(Object.values(row)[0]) : Number.NaN
}

/**
 * Brings the file to the newest schema under a write lock, so that of two programs started at once one
 * migrates and the other waits. A file that already holds entries is copied first.
 *
 * @param copyTo  where the copy goes, by the schema it holds
 * @returns the schema found, which is above the list's length when a newer program wrote the file
 */
export function migrate(
  database: Database.Database,
  copyTo: (schema: number) => string,
  list: readonly string[] = migrations,
): number {
  const before = pragmaNumber(database, 'user_version')
  if (before >= list.length) return before
  if (before > 0) database.exec(`VACUUM INTO '${copyTo(before).replaceAll("'", "''")}'`)
  return inTransaction(database, () => {
    const found = pragmaNumber(database, 'user_version')
    for (const statements of list.slice(found)) database.exec(statements)
    if (found < list.length) {
      database.exec(`PRAGMA application_id = ${applicationId}`)
      database.exec(`PRAGMA user_version = ${list.length}`)
    }
    return found
  })
}
