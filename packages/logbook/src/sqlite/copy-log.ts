import Database from 'libsql'

import { syncFile } from './sync.ts'

/**
 * Writes a consistent copy of a log while others read and write it; it is on the disk when this returns.
 *
 * @param to  a file that is not there yet
 * @throws the engine's error: no room, a damaged page, a file that is there
 */
export function copyLog(file: string, to: string): void {
  withConnection(file, (database) => copyInto(database, to))
}

/** The same of a log that is open. */
export function copyInto(database: Database.Database, to: string): void {
  database.exec(`VACUUM INTO '${to.replaceAll("'", "''")}'`)
  // The engine does not wait for the disk to have the copy.
  syncFile(to)
}

/**
 * Folds the journal beside a log into it, so that one file holds all.
 *
 * @returns false when another program has the log open, in which case nothing changed
 * @throws the engine's error where the file cannot be read
 */
export function foldIntoOneFile(file: string): boolean {
  try {
    withConnection(file, (database) => database.exec('PRAGMA journal_mode = DELETE'))
    return true
  } catch (error) {
    if (error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY')) return false
    throw error
  }
}

/**
 * Statements run by `exec` alone: a prepared one keeps the file open after the connection is closed, and
 * an open file cannot be moved away on every platform.
 */
function withConnection(file: string, work: (database: Database.Database) => void): void {
  const database = new Database(file)
  try {
    database.exec('PRAGMA busy_timeout = 3000')
    work(database)
  } finally {
    database.close()
  }
}
