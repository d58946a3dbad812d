import type { Compilable, Kysely, SelectQueryBuilder } from 'kysely'

import type { Attachment, Span } from '../logbook.ts'
import { attachmentRowOf } from './attachment-row.ts'
import { cachedBytes } from './cached-bytes.ts'
import { markOf } from './page.ts'
import type { AttachmentRow, CacheRow, EntryRow, Tables } from './tables.ts'

type Entries = SelectQueryBuilder<Tables, 'entry', EntryRow>

/** A statement ready to run, and the rows it gives. */
export type Query<Row> = Compilable<Row> & { execute(): Promise<Row[]> }

/** A list in parts that one statement can carry: SQLite takes 32,766 values in one, a row has ten. */
export function inParts<Item>(list: readonly Item[]): readonly (readonly Item[])[] {
  const size = 1000
  return Array.from({ length: Math.ceil(list.length / size) }, (_, part) =>
    list.slice(part * size, (part + 1) * size),
  )
}

/** The statements of one workspace's log, in the words of either engine. */
export class LogQueries {
  readonly #on: Kysely<Tables>
  readonly #workspace: string

  constructor(on: Kysely<Tables>, workspace: string) {
    this.#on = on
    this.#workspace = workspace
  }

  /** Entries of a span in the order of receipt. */
  entries(span?: Span): Query<EntryRow> {
    return this.#within(span).orderBy('receipt')
  }

  /** Entries of a page, and one more, which tells whether there is a next. */
  page(limit: number, span: Span | undefined, before: string | undefined): Query<EntryRow> {
    const latest = this.#within(span).orderBy('day', 'desc').orderBy('receipt', 'desc')
    const query = latest.limit(limit + 1)
    if (before === undefined) return query
    const { day, receipt } = markOf(before)
    return query.where(({ eb, refTuple, tuple }) => eb(refTuple('day', 'receipt'), '<', tuple(day, receipt)))
  }

  /** What is stored under the ids, of which `inParts` makes few enough. */
  present(ids: readonly string[]): Query<Pick<EntryRow, 'id' | 'document'>> {
    return this.#ofEntries().where('id', 'in', ids).select(['id', 'document'])
  }

  lastReceipt(): Query<Pick<EntryRow, 'receipt'>> {
    return this.#ofEntries().select('receipt').orderBy('receipt', 'desc').limit(1)
  }

  /** The last time of receipt of a system. */
  lastKnownAt(system: string): Query<Pick<EntryRow, 'system' | 'known_at'>> {
    const ofSystem = this.#ofEntries().where('system', '=', system)
    return ofSystem.select(['system', 'known_at']).orderBy('receipt', 'desc').limit(1)
  }

  /** Stores rows, of which `inParts` makes few enough. */
  insert(rows: readonly EntryRow[]): Query<unknown> {
    return this.#on.insertInto('entry').values(rows)
  }

  systems(): Query<Pick<EntryRow, 'system'>> {
    return this.#ofEntries().select('system').distinct().orderBy('system')
  }

  /** One attachment, or all of them by name. */
  attachments(sha256?: string): Query<AttachmentRow> {
    const all = this.#on.selectFrom('attachment').selectAll().where('workspace', '=', this.#workspace)
    return (sha256 === undefined ? all : all.where('sha256', '=', sha256)).orderBy('sha256')
  }

  /** Keeps the first of those with one name. */
  attach(attachment: Attachment): Query<unknown> {
    const insert = this.#on.insertInto('attachment').values(attachmentRowOf(attachment, this.#workspace))
    return insert.onConflict((conflict) => conflict.doNothing())
  }

  cached(key: string): Query<Pick<CacheRow, 'document'>> {
    const ofKey = this.#on.selectFrom('cache').where('workspace', '=', this.#workspace).where('key', '=', key)
    return ofKey.select('document')
  }

  cache(key: string, text: string): Query<unknown> {
    const document = cachedBytes(text)
    const insert = this.#on.insertInto('cache').values({ workspace: this.#workspace, key, document })
    return insert.onConflict((conflict) => conflict.columns(['workspace', 'key']).doUpdateSet({ document }))
  }

  forgetCaches(): Query<unknown> {
    return this.#on.deleteFrom('cache').where('workspace', '=', this.#workspace)
  }

  #ofEntries(): SelectQueryBuilder<Tables, 'entry', object> {
    return this.#on.selectFrom('entry').where('workspace', '=', this.#workspace)
  }

  #within(span: Span = {}): Entries {
    let query: Entries = this.#ofEntries().selectAll()
    if (span.system !== undefined) query = query.where('system', '=', span.system)
    if (span.from !== undefined) query = query.where('day', '>=', span.from)
    if (span.to !== undefined) query = query.where('day', '<=', span.to)
    if (span.after !== undefined) query = query.where('receipt', '>', span.after)
    if (span.kinds !== undefined) query = oneOf(query, 'kind', span.kinds)
    if (span.ids !== undefined) query = oneOf(query, 'id', span.ids)
    if (span.replacing !== undefined) query = oneOf(query, 'replaces', span.replacing)
    return query
  }
}

/** Not every engine takes an empty list. */
function oneOf(query: Entries, column: 'kind' | 'id' | 'replaces', values: readonly string[]): Entries {
  return values.length === 0 ? query.where((eb) => eb.lit(false)) : query.where(column, 'in', values)
}
