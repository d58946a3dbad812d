import Database from 'libsql'

import { type Issue, Refused } from '../issue.ts'
import type { Appended, Attachment, Clock, Logbook, Sent } from '../logbook.ts'
import { attachmentOf } from '../storage/attachment-row.ts'
import { cachedDocument } from '../storage/cached-bytes.ts'
import { keptOf, storedOf } from '../storage/entry-row.ts'
import { inParts, LogQueries, type Query } from '../storage/log-queries.ts'
import { pageOf } from '../storage/page.ts'
import { receive, refuseUnreadable } from '../storage/receive.ts'
import { sha256 } from '../storage/sha256.ts'
import type { Tables } from '../storage/tables.ts'
import { comingNow, type LastKnown, refuseBackwards, takenOver } from '../storage/times-of-receipt.ts'
import type { AttachmentFiles } from './attachment-files.ts'
import { foldJournal } from './fold-journal.ts'
import { notRead, notWritten } from './not-available.ts'
import { inTransaction, rowsOf, sqliteQueries } from './queries.ts'

/** An open file of the newest schema, and how long it waits for another program, in milliseconds. */
export interface OpenFile {
  readonly database: Database.Database
  readonly attachments: AttachmentFiles
  readonly patience: number
}

/** The log of one workspace in an open file. */
export function sqliteLogbook(file: OpenFile, workspace: string, clock: Clock): Logbook {
  const { database, attachments: files, patience } = file
  const log = new LogQueries(sqliteQueries<Tables>(), workspace)
  const rows = <Row>(query: Query<Row>): readonly Row[] => rowsOf(database, query)
  const reading = <Result>(work: () => Result): Result => orRefuse(notRead, work)
  const writing = <Result>(work: () => Result): Result => {
    const result = orRefuse(notWritten, () => inTransaction(database, work))
    foldJournal(database, patience)
    return result
  }
  const store = (
    entries: readonly Sent[],
    knownAt: (last: LastKnown) => (entry: Sent) => string,
  ): Appended => {
    refuseUnreadable(entries, workspace)
    return writing(() => append(database, log, entries, knownAt))
  }
  return {
    workspace,
    async append(entries) {
      return store(entries, (last) => comingNow(last, clock()))
    },
    async takeOver(kept) {
      refuseBackwards(kept)
      const entries = kept.map(({ knownAt, ...sent }) => sent)
      return store(entries, (last) => takenOver(kept, last, clock()))
    },
    async read(span) {
      return reading(() => rows(log.entries(span)).map(storedOf))
    },
    async asSent(span) {
      return reading(() => rows(log.entries(span)).map(keptOf))
    },
    async newest(limit, span, before) {
      return reading(() => pageOf(rows(log.page(limit, span, before)), limit))
    },
    async received() {
      return reading(() => lastReceipt(database, log))
    },
    async systems() {
      return reading(() => rows(log.systems()).map(({ system }) => system))
    },
    async attach(bytes, type) {
      const attached: Attachment = { sha256: sha256(bytes), type, size: bytes.length }
      // The bytes first: a row must never name a file that is not there.
      orRefuse(notWritten, () => files.put(attached.sha256, bytes))
      return writing(() => {
        rows(log.attach(attached))
        return attachmentOf(rows(log.attachments(attached.sha256))[0])
      })
    },
    async attachment(name) {
      const [found] = reading(() => rows(log.attachments(name)))
      return found && { ...attachmentOf(found), bytes: files.get(found.sha256) }
    },
    async attachments() {
      return reading(() => rows(log.attachments())).map(attachmentOf)
    },
    async cached(key) {
      const [found] = reading(() => rows(log.cached(key)))
      return found && cachedDocument(found.document)
    },
    async cache(key, document) {
      writing(() => rows(log.cache(key, document)))
    },
    async forgetCaches() {
      writing(() => rows(log.forgetCaches()))
    },
    async close() {
      if (!database.open) return
      // The driver lets go of the file when its statements are collected, which may be at the end of
      // the program; until then the file alone must hold everything.
      foldJournal(database, patience)
      database.close()
    },
  }
}

function append(
  database: Database.Database,
  log: LogQueries,
  entries: readonly Sent[],
  knownAt: (last: LastKnown) => (entry: Sent) => string,
): Appended {
  const ids = [...new Set(entries.map(({ id }) => id))]
  const systems = [...new Set(entries.map(({ system }) => system))]
  const last = systems.flatMap((system) => rowsOf(database, log.lastKnownAt(system)))
  const { rows, appended } = receive(entries, {
    receipt: lastReceipt(database, log),
    rows: inParts(ids).flatMap((part) => rowsOf(database, log.present(part))),
    knownAt: knownAt(new Map(last.map(({ system, known_at }) => [system, known_at]))),
  })
  for (const part of inParts(rows)) rowsOf(database, log.insert(part))
  return appended
}

function lastReceipt(database: Database.Database, log: LogQueries): number {
  return rowsOf(database, log.lastReceipt())[0]?.receipt ?? 0
}

/** Runs `work`; what the disk refuses becomes an issue. */
function orRefuse<Result>(issue: (reason: string) => Issue, work: () => Result): Result {
  try {
    return work()
  } catch (error) {
    const ofDisk = error instanceof Database.SqliteError || (error instanceof Error && 'errno' in error)
    throw ofDisk ? new Refused([issue(error.message)]) : error
  }
}
