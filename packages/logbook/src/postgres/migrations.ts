import { type Kysely, sql } from 'kysely'

import type { Tables } from '../storage/tables.ts'

/** The schema of the database that holds our tables. */
export const home = 'holdfast'

/** The role in which every call runs: it may add entries and read them, and sees one workspace. */
export const keeper = 'holdfast_keeper'

/** Leads the database from one schema to the next, inside a transaction. */
export type Migration = (database: Kysely<Tables>) => Promise<void>

/**
 * Each leads from schema n (its place in the list) to n + 1. Forward only: a released one is never
 * changed. A backup before is the operator's, with the server's own means.
 */
export const migrations: readonly Migration[] = [entriesAttachmentsAndCaches]

async function entriesAttachmentsAndCaches(database: Kysely<Tables>): Promise<void> {
  // Text in byte order, as SQLite compares it, whatever the language of the server.
  const statements = `
    CREATE TABLE holdfast.entry (
      workspace text COLLATE "C" NOT NULL CHECK (workspace <> ''),
      id text COLLATE "C" NOT NULL,
      receipt integer NOT NULL,
      system text COLLATE "C" NOT NULL,
      kind text COLLATE "C" NOT NULL,
      day text COLLATE "C" NOT NULL,
      known_at text COLLATE "C" NOT NULL,
      replaces text COLLATE "C",
      document text NOT NULL,
      seal text NOT NULL,
      PRIMARY KEY (workspace, id)
    );
    CREATE UNIQUE INDEX entry_by_receipt ON holdfast.entry (workspace, receipt);
    CREATE INDEX entry_by_system ON holdfast.entry (workspace, system, receipt);
    CREATE INDEX entry_by_day ON holdfast.entry (workspace, system, day, receipt);
    CREATE INDEX entry_by_kind ON holdfast.entry (workspace, system, kind, day);
    CREATE INDEX entry_by_replaced ON holdfast.entry (workspace, replaces) WHERE replaces IS NOT NULL;
    CREATE TABLE holdfast.attachment (
      workspace text COLLATE "C" NOT NULL CHECK (workspace <> ''),
      sha256 text COLLATE "C" NOT NULL,
      type text NOT NULL,
      size integer NOT NULL,
      seal text NOT NULL,
      PRIMARY KEY (workspace, sha256)
    );
    CREATE TABLE holdfast.attachment_bytes (
      workspace text COLLATE "C" NOT NULL CHECK (workspace <> ''),
      sha256 text COLLATE "C" NOT NULL,
      bytes bytea NOT NULL,
      PRIMARY KEY (workspace, sha256)
    );
    CREATE TABLE holdfast.cache (
      workspace text COLLATE "C" NOT NULL CHECK (workspace <> ''),
      key text COLLATE "C" NOT NULL,
      document bytea NOT NULL,
      PRIMARY KEY (workspace, key)
    );
    GRANT USAGE ON SCHEMA holdfast TO holdfast_keeper;
    GRANT SELECT, INSERT ON holdfast.entry, holdfast.attachment, holdfast.attachment_bytes TO holdfast_keeper;
    GRANT SELECT, INSERT, UPDATE, DELETE ON holdfast.cache TO holdfast_keeper;`
  await sql.raw(statements).execute(database)
  for (const table of ['entry', 'attachment', 'attachment_bytes', 'cache']) {
    await sql
      .raw(
        `ALTER TABLE holdfast.${table} ENABLE ROW LEVEL SECURITY;
         ALTER TABLE holdfast.${table} FORCE ROW LEVEL SECURITY;
         CREATE POLICY own_workspace ON holdfast.${table}
           USING (workspace = current_setting('holdfast.workspace', true))
           WITH CHECK (workspace = current_setting('holdfast.workspace', true));`,
      )
      .execute(database)
  }
}

/**
 * Brings the database to the newest schema under a lock, so that of several programs started at once
 * one migrates and the others wait.
 *
 * @returns the schema found, which is above the list's length when a newer program wrote it
 */
export async function migrate(
  database: Kysely<Tables>,
  list: readonly Migration[] = migrations,
): Promise<number> {
  return database.transaction().execute(async (transaction) => {
    await sql`SELECT pg_advisory_xact_lock(hashtextextended(${home}, 0))`.execute(transaction)
    const found = await schemaOf(transaction)
    if (found >= list.length) return found
    if (found === 0) await makeHome(transaction)
    for (const step of list.slice(found)) await step(transaction)
    await sql`UPDATE holdfast.schema SET version = ${list.length}`.execute(transaction)
    return found
  })
}

/** 0 where this database holds no log yet. */
async function schemaOf(database: Kysely<Tables>): Promise<number> {
  const table = await sql<{ exists: boolean }>`
    SELECT to_regclass('holdfast.schema') IS NOT NULL AS exists`.execute(database)
  if (table.rows[0]?.exists !== true) return 0
  const { rows } = await sql<{ version: number }>`SELECT version FROM holdfast.schema`.execute(database)
  return rows[0]?.version ?? 0
}

async function makeHome(database: Kysely<Tables>): Promise<void> {
  // Roles are the server's, not the database's: another log on it may have made this one.
  const role = await sql`SELECT 1 FROM pg_roles WHERE rolname = ${keeper}`.execute(database)
  if (role.rows.length === 0) await sql.raw(unlessThere(`CREATE ROLE ${keeper} NOLOGIN`)).execute(database)
  await sql
    .raw(
      `DO $$ BEGIN
         IF NOT pg_has_role('${keeper}', 'MEMBER') THEN EXECUTE 'GRANT ${keeper} TO CURRENT_USER'; END IF;
       END $$;
       CREATE SCHEMA holdfast;
       CREATE TABLE holdfast.schema (version integer NOT NULL);
       INSERT INTO holdfast.schema VALUES (0);`,
    )
    .execute(database)
}

/** Another log on the same server may be making the role at the same instant. */
function unlessThere(statement: string): string {
  return `DO $$ BEGIN ${statement}; EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$`
}
