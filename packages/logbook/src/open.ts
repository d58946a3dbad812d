import type { Clock, Opened } from './logbook.ts'
import { openLogbook } from './sqlite/open.ts'

/** Where the log is and whose it is. */
export interface StoreOptions {
  /** The keeper's data folder, which holds the log where no database server is named. */
  readonly folder: string
  /** Address of a PostgreSQL database, as DATABASE_URL gives it; empty counts as none. */
  readonly databaseUrl?: string | undefined
  readonly workspace?: string
  readonly clock?: Clock
}

/** Opens the log of a workspace: on the database server where one is named, else in the folder. */
export async function openStore({ folder, databaseUrl, ...whose }: StoreOptions): Promise<Opened> {
  if (!databaseUrl) return openLogbook({ folder, ...whose })
  // The driver is read only where a server is named: most keepers have none.
  const { openPostgres } = await import('./postgres/open.ts')
  return openPostgres({ url: databaseUrl, ...whose })
}
