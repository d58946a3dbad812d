import type { Where } from './open-log.ts'
import { refuse } from './refuse.ts'

/** Copies of files are for a log that is a file. @throws Refused where a database server keeps it */
export function refuseOnServer(what: 'Backup' | 'Restore', { data }: Where): void {
  if (data !== undefined || !process.env.DATABASE_URL) return
  throw refuse(
    'log-on-server',
    what,
    'the log is kept by the database server that DATABASE_URL names',
    'A log in a data folder.',
    'Use the backup of that server (pg_dump), or take all of it along with "holdfast export log.json".',
  )
}
