import {
  type Compilable,
  DummyDriver,
  Kysely,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely'
import type Database from 'libsql'

/**
 * The query builder for SQLite, for its words only: statements run through `rowsOf`, at once.
 *
 * The builder's own driver is asynchronous, so a transaction of it spans many ticks; a second
 * connection of the same process that waits for the lock then blocks the very thread that would
 * release it, until the wait times out. Run at once, no transaction outlives its tick.
 */
export function sqliteQueries<Tables>(): Kysely<Tables> {
  return new Kysely<Tables>({
    dialect: {
      createAdapter: () => new SqliteAdapter(),
      createDriver: () => new DummyDriver(),
      createIntrospector: (db) => new SqliteIntrospector(db),
      createQueryCompiler: () => new SqliteQueryCompiler(),
    },
  })
}

/** Runs a statement and gives its rows. */
export function rowsOf<Row>(database: Database.Database, query: Compilable<Row>): readonly Row[] {
  const { sql, parameters } = query.compile()
  // The builder typed the row from the same tables that the migrations made.
  return database.prepare(sql).all(parameters) as Row[]
}

/** Runs `work` under the write lock: all of it is stored, or nothing. */
export function inTransaction<Result>(database: Database.Database, work: () => Result): Result {
  database.exec('BEGIN IMMEDIATE')
  try {
    const result = work()
    database.exec('COMMIT')
    return result
  } catch (error) {
    if (database.inTransaction) database.exec('ROLLBACK')
    throw error
  }
}
