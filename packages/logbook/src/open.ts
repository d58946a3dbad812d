import type { Clock, Opened } from './logbook.ts'
import { openLogbook } from './sqlite/open.ts'

/** Where the log is and whose it is. */
export interface StoreOptions {
  /** The keeper's data folder, where there is no server of databases. */
  readonly folder: string
  /** Address of a PostgreSQL database (`postgres://…`), usually from DATABASE_URL; empty counts as none. */
  readonly databaseUrl?: string | undefined
  readonly workspace?: string
  readonly clock?: Clock
}

/** Opens the log of a workspace in the folder. */
export async function openStore({ folder, workspace, clock }: StoreOptions): Promise<Opened> {
  return openLogbook({ folder, ...(workspace && { workspace }), ...(clock && { clock }) })
}
