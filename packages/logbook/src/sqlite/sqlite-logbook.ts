import canonicalize from 'canonicalize'
import Database from 'libsql'

import type { Entry, Stored } from '../entries/entry.ts'
import { readEntry } from '../entries/read-entry.ts'
import { type Issue, Refused } from '../issue.ts'
import type { Appended, Logbook, Span } from '../logbook.ts'
import { inTransaction, rowsOf, sqliteQueries } from './queries.ts'

/** Tells the time of receipt. */
export type Clock = () => Date

interface Tables {
  readonly entry: {
    readonly workspace: string
    readonly id: string
    /** 1, 2, 3 … within the workspace: the order in which entries came. */
    readonly receipt: number
    readonly system: string
    readonly kind: string
    /** The civil day of `at`. */
    readonly day: string
    readonly known_at: string
    /** The entry as it was sent, whole: fields that this version does not know are kept. */
    readonly document: string
  }
}

const queries = sqliteQueries<Tables>()

/** The log of one workspace in an open SQLite file of the newest schema. */
export function sqliteLogbook(database: Database.Database, workspace: string, clock: Clock): Logbook {
  return {
    workspace,
    async append(entries) {
      refuseForeign(entries, workspace)
      try {
        return inTransaction(database, () => append(database, workspace, clock().toISOString(), entries))
      } catch (error) {
        throw error instanceof Database.SqliteError ? new Refused([notWritten(error)]) : error
      }
    },
    async read(span = {}) {
      return read(database, workspace, span)
    },
    async systems() {
      const query = queries.selectFrom('entry').select('system').distinct().where('workspace', '=', workspace)
      return rowsOf(database, query.orderBy('system')).map((row) => row.system)
    },
    async close() {
      if (database.open) database.close()
    },
  }
}

function append(
  database: Database.Database,
  workspace: string,
  now: string,
  entries: readonly Entry[],
): Appended {
  const ofWorkspace = queries.selectFrom('entry').where('workspace', '=', workspace)
  const [last] = rowsOf(
    database,
    ofWorkspace.select(['receipt', 'known_at']).orderBy('receipt', 'desc').limit(1),
  )
  // A clock set back must not put a later receipt before an earlier one.
  const known_at = last !== undefined && last.known_at > now ? last.known_at : now
  const outcome = { added: [] as string[], already: [] as string[], differing: [] as string[] }
  let receipt = last?.receipt ?? 0
  for (const entry of entries) {
    const { id, system, kind } = entry
    const [present] = rowsOf(database, ofWorkspace.select('document').where('id', '=', id))
    if (present === undefined) {
      receipt++
      const row = { workspace, id, receipt, system, kind, day: entry.at.slice(0, 10), known_at }
      rowsOf(database, queries.insertInto('entry').values({ ...row, document: JSON.stringify(entry) }))
      outcome.added.push(id)
    } else {
      outcome.already.push(id)
      if (saysOtherwise(JSON.parse(present.document), entry)) outcome.differing.push(id)
    }
  }
  return outcome
}

function saysOtherwise(stored: Entry, sent: Entry): boolean {
  return canonicalize([stored.kind, stored.at, stored.body]) !== canonicalize([sent.kind, sent.at, sent.body])
}

function read(database: Database.Database, workspace: string, span: Span): readonly Stored[] {
  let query = queries.selectFrom('entry').select(['document', 'known_at']).where('workspace', '=', workspace)
  if (span.system !== undefined) query = query.where('system', '=', span.system)
  if (span.kinds !== undefined) query = query.where('kind', 'in', span.kinds)
  if (span.from !== undefined) query = query.where('day', '>=', span.from)
  if (span.to !== undefined) query = query.where('day', '<=', span.to)
  return rowsOf(database, query.orderBy('receipt')).map(({ document, known_at }) => {
    const entry = readEntry(JSON.parse(document))
    if (!entry.ok) throw new Refused(entry.issues)
    return { ...entry.entry, knownAt: known_at }
  })
}

function refuseForeign(entries: readonly Entry[], workspace: string): void {
  const foreign = entries.filter((entry) => entry.workspace !== workspace)
  if (foreign.length === 0) return
  throw new Refused(
    foreign.map((entry) => ({
      code: 'other-workspace',
      where: `Entry ${entry.id}`,
      got: `it belongs to workspace "${entry.workspace}"`,
      accepted: `This log is that of "${workspace}".`,
      next: 'Send it to its own workspace. Nothing was stored.',
    })),
  )
}

function notWritten(error: Error): Issue {
  return {
    code: 'log-not-written',
    where: 'Log',
    got: `the disk did not take the entries (${error.message})`,
    accepted: 'A log that no other program has locked, on a disk with room.',
    next: 'Free some room or close the other program, then send again. Nothing was stored.',
  }
}
