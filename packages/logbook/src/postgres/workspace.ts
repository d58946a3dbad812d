import { type Kysely, sql, type Transaction } from 'kysely'

import type { Tables } from '../storage/tables.ts'
import { home, keeper } from './migrations.ts'

/**
 * Runs `work` in a transaction that may see one workspace only. The role and the workspace are set for
 * the transaction alone, so that a connection given back to the pool knows neither; without them the
 * policies of the tables show nothing.
 *
 * An acknowledgement waits for the disk whatever the server's own setting is.
 */
export async function within<Result>(
  database: Kysely<Tables>,
  workspace: string,
  work: (transaction: Transaction<Tables>) => Promise<Result>,
): Promise<Result> {
  return database.transaction().execute(async (transaction) => {
    // set_config(…, true) is SET LOCAL; one statement is one journey to the server.
    await sql`
      SELECT set_config('holdfast.workspace', ${workspace}, true),
             set_config('synchronous_commit', 'on', true),
             set_config('role', ${keeper}, true)`.execute(transaction)
    return work(transaction.withSchema(home) as Transaction<Tables>)
  })
}

/** Lets one writer of a workspace in at a time: receipts are numbered without gaps, in order of commit. */
export async function asOnlyWriter(transaction: Transaction<Tables>, workspace: string): Promise<void> {
  await sql`SELECT pg_advisory_xact_lock(hashtextextended(${`${home} ${workspace}`}, 0))`.execute(transaction)
}
