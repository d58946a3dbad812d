import Database from 'libsql'

/**
 * Carries what is in the journal into the file and empties the journal, unless another program is
 * reading or writing just now: then it is done after the next write.
 *
 * After each write, not now and then as the engine would: damage to a journal looks like its end, so
 * what stands there alone could be lost without a word; and whoever copies the file has everything.
 * Measured: 0.6 ms a write instead of 0.2.
 */
export function foldJournal(database: Database.Database, patience: number): void {
  try {
    database.exec('PRAGMA busy_timeout = 0')
    database.exec('PRAGMA wal_checkpoint(TRUNCATE)')
  } catch (error) {
    // What was written is safe in the journal; a disk that is full now may have room at the next write.
    if (!(error instanceof Database.SqliteError)) throw error
  } finally {
    database.exec(`PRAGMA busy_timeout = ${patience}`)
  }
}
