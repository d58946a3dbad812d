import Database from 'libsql'

/**
 * Does the work again while another program keeps the file busy, for at most `patience` milliseconds:
 * some locks of SQLite are refused at once, whatever its own timeout.
 */
export function patiently<Result>(patience: number, work: () => Result): Result {
  const until = performance.now() + patience
  for (;;) {
    try {
      return work()
    } catch (error) {
      const busy = error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY')
      if (!busy || performance.now() > until) throw error
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5)
    }
  }
}
