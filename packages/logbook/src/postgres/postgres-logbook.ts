import type { Kysely, Transaction } from 'kysely'

import type { Appended, Attachment, Clock, Logbook, Sent } from '../logbook.ts'
import { attachmentOf } from '../storage/attachment-row.ts'
import { cachedDocument } from '../storage/cached-bytes.ts'
import { damagedAttachment } from '../storage/damaged-attachment.ts'
import { keptOf, storedOf } from '../storage/entry-row.ts'
import { inParts, LogQueries } from '../storage/log-queries.ts'
import { pageOf } from '../storage/page.ts'
import { receive, refuseUnreadable } from '../storage/receive.ts'
import { sha256 } from '../storage/sha256.ts'
import type { EntryRow, Tables } from '../storage/tables.ts'
import { comingNow, type LastKnown, refuseBackwards, takenOver } from '../storage/times-of-receipt.ts'
import { notRead, notWritten, orRefuse } from './faults.ts'
import { asOnlyWriter, within } from './workspace.ts'

/** Attachments lie in rows here, so that any number of programs on any machine have them. */
type AttachedBytes = {
  readonly attachment_bytes: {
    readonly workspace: string
    readonly sha256: string
    readonly bytes: Uint8Array
  }
}

/** The log of one workspace in a PostgreSQL database of the newest schema. */
export function postgresLogbook(database: Kysely<Tables>, workspace: string, clock: Clock): Logbook {
  const reading = <Result>(work: (log: LogQueries, on: Transaction<Tables>) => Promise<Result>) =>
    orRefuse(notRead, () => within(database, workspace, (on) => work(new LogQueries(on, workspace), on)))
  const writing = <Result>(work: (log: LogQueries, on: Transaction<Tables>) => Promise<Result>) =>
    orRefuse(notWritten, () => within(database, workspace, (on) => work(new LogQueries(on, workspace), on)))
  const store = async (
    entries: readonly Sent[],
    knownAt: (last: LastKnown) => (entry: Sent) => string,
  ): Promise<Appended> => {
    refuseUnreadable(entries, workspace)
    return writing(async (log, on) => {
      await asOnlyWriter(on, workspace)
      return append(log, entries, knownAt)
    })
  }
  return {
    workspace,
    append(entries) {
      return store(entries, (last) => comingNow(last, clock()))
    },
    async takeOver(kept) {
      refuseBackwards(kept)
      const entries = kept.map(({ knownAt, ...sent }) => sent)
      return store(entries, (last) => takenOver(kept, last, clock()))
    },
    read(span) {
      return reading(async (log) => (await log.entries(span).execute()).map(storedOf))
    },
    asSent(span) {
      return reading(async (log) => (await log.entries(span).execute()).map(keptOf))
    },
    newest(limit, span, before) {
      return reading(async (log) => pageOf(await log.page(limit, span, before).execute(), limit))
    },
    received() {
      return reading(lastReceipt)
    },
    systems() {
      return reading(async (log) => (await log.systems().execute()).map(({ system }) => system))
    },
    attach(bytes, type) {
      const attached: Attachment = { sha256: sha256(bytes), type, size: bytes.length }
      return writing(async (log, on) => {
        const { sha256 } = attached
        const row = { workspace, sha256, bytes: Buffer.from(bytes) }
        const insert = on.withTables<AttachedBytes>().insertInto('attachment_bytes').values(row)
        await insert.onConflict((conflict) => conflict.doNothing()).execute()
        await log.attach(attached).execute()
        const [found] = await log.attachments(sha256).execute()
        return attachmentOf(found)
      })
    },
    attachment(name) {
      return reading(async (log, on) => {
        const [found] = await log.attachments(name).execute()
        if (found === undefined) return undefined
        const all = on.withTables<AttachedBytes>().selectFrom('attachment_bytes').select('bytes')
        const ofName = all.where('workspace', '=', workspace).where('sha256', '=', name)
        const { bytes } = await ofName.executeTakeFirstOrThrow()
        if (sha256(bytes) !== name)
          throw damagedAttachment(name, 'its bytes are not those that were attached')
        return { ...attachmentOf(found), bytes: new Uint8Array(bytes) }
      })
    },
    attachments() {
      return reading(async (log) => (await log.attachments().execute()).map(attachmentOf))
    },
    cached(key) {
      return reading(async (log) => {
        const [found] = await log.cached(key).execute()
        return found && cachedDocument(found.document)
      })
    },
    async cache(key, document) {
      await writing((log) => log.cache(key, document).execute())
    },
    async forgetCaches() {
      await writing((log) => log.forgetCaches().execute())
    },
    async close() {
      await database.destroy()
    },
  }
}

async function append(
  log: LogQueries,
  entries: readonly Sent[],
  knownAt: (last: LastKnown) => (entry: Sent) => string,
): Promise<Appended> {
  const ids = [...new Set(entries.map(({ id }) => id))]
  const last = new Map<string, string>()
  for (const system of new Set(entries.map((entry) => entry.system))) {
    for (const { known_at } of await log.lastKnownAt(system).execute()) last.set(system, known_at)
  }
  const present: Pick<EntryRow, 'id' | 'document'>[] = []
  for (const part of inParts(ids)) present.push(...(await log.present(part).execute()))
  const { rows, appended } = receive(entries, {
    receipt: await lastReceipt(log),
    rows: present,
    knownAt: knownAt(last),
  })
  for (const part of inParts(rows)) await log.insert(part).execute()
  return appended
}

async function lastReceipt(log: LogQueries): Promise<number> {
  return (await log.lastReceipt().execute())[0]?.receipt ?? 0
}
