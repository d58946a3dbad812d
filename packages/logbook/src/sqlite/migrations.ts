import type Database from 'libsql'

import { rowOf } from '../storage/entry-row.ts'
import type { Tables } from '../storage/tables.ts'
import { copyInto } from './copy-log.ts'
import { inTransaction, rowsOf, sqliteQueries } from './queries.ts'

/** Marks the file as ours: "Hold" in ASCII. */
export const applicationId = 0x486f6c64

/** Leads the file from one schema to the next, inside a transaction. */
export type Migration = (database: Database.Database) => void

/**
 * Each leads from schema n (its place in the list) to n + 1. Forward only: a released one is never
 * changed.
 */
export const migrations: readonly Migration[] = [entriesAlone, sealsAttachmentsAndCaches, figuresOfALongLog]

function entriesAlone(database: Database.Database): void {
  database.exec(`
    CREATE TABLE entry (
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
    CREATE INDEX entry_by_system ON entry (workspace, system, kind, day);`)
}

function sealsAttachmentsAndCaches(database: Database.Database): void {
  database.exec(`
    DROP INDEX entry_by_receipt;
    DROP INDEX entry_by_system;
    ALTER TABLE entry RENAME TO unsealed;
    CREATE TABLE entry (
      workspace TEXT NOT NULL,
      id TEXT NOT NULL,
      receipt INTEGER NOT NULL,
      system TEXT NOT NULL,
      kind TEXT NOT NULL,
      day TEXT NOT NULL,
      known_at TEXT NOT NULL,
      replaces TEXT,
      document TEXT NOT NULL,
      seal TEXT NOT NULL,
      PRIMARY KEY (workspace, id)
    ) STRICT, WITHOUT ROWID;`)
  const queries = sqliteQueries<Tables & { unsealed: Omit<Tables['entry'], 'replaces' | 'seal'> }>()
  for (const { document, receipt, known_at } of rowsOf(
    database,
    queries.selectFrom('unsealed').selectAll(),
  )) {
    rowsOf(database, queries.insertInto('entry').values(rowOf(JSON.parse(document), receipt, known_at)))
  }
  database.exec(`
    DROP TABLE unsealed;
    CREATE UNIQUE INDEX entry_by_receipt ON entry (workspace, receipt);
    CREATE INDEX entry_by_system ON entry (workspace, system, receipt);
    CREATE INDEX entry_by_day ON entry (workspace, system, day, receipt, kind);
    CREATE INDEX entry_by_kind ON entry (workspace, system, kind, day);
    CREATE INDEX entry_by_replaced ON entry (workspace, replaces) WHERE replaces IS NOT NULL;
    CREATE TRIGGER entry_stays BEFORE UPDATE ON entry
      BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END;
    CREATE TRIGGER entry_remains BEFORE DELETE ON entry
      BEGIN SELECT RAISE(ABORT, 'an entry is never deleted'); END;
    CREATE TABLE attachment (
      workspace TEXT NOT NULL,
      sha256 TEXT NOT NULL,
      type TEXT NOT NULL,
      size INTEGER NOT NULL,
      seal TEXT NOT NULL,
      PRIMARY KEY (workspace, sha256)
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE cache (
      workspace TEXT NOT NULL,
      key TEXT NOT NULL,
      document BLOB NOT NULL,
      PRIMARY KEY (workspace, key)
    ) STRICT, WITHOUT ROWID;`)
}

/**
 * Tells the planner how a long log looks: without figures it takes a workspace for ten rows, and walks
 * through all of them for the corrections of a page. Written down and never measured again, they give the
 * same plan on every machine. On 100,000 entries the corrections of a page take 1 ms in place of 176.
 */
function figuresOfALongLog(database: Database.Database): void {
  database.exec(`
    ANALYZE;
    DELETE FROM sqlite_stat1;
    INSERT INTO sqlite_stat1 (tbl, idx, stat) VALUES
      ('entry', 'entry', '100000 100000 1'),
      ('entry', 'entry_by_receipt', '100000 100000 1'),
      ('entry', 'entry_by_system', '100000 100000 50000 1'),
      ('entry', 'entry_by_day', '100000 100000 50000 20 1 1'),
      ('entry', 'entry_by_kind', '100000 100000 50000 500 2'),
      ('entry', 'entry_by_replaced', '1000 1000 2');
    ANALYZE sqlite_schema;`)
}

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
  list: readonly Migration[] = migrations,
): number {
  const before = pragmaNumber(database, 'user_version')
  if (before >= list.length) return before
  if (before > 0) copyInto(database, copyTo(before))
  return inTransaction(database, () => {
    const found = pragmaNumber(database, 'user_version')
    for (const step of list.slice(found)) step(database)
    if (found < list.length) {
      database.exec(`PRAGMA application_id = ${applicationId}`)
      database.exec(`PRAGMA user_version = ${list.length}`)
    }
    return found
  })
}
