import type { EntryKind, Envelope, Stored } from './entries/entry.ts'
import type { Issue } from './issue.ts'

/** An entry as it was sent: of any version of its kind, with fields that this program does not know. */
export type Sent = Envelope & { readonly kind: string; readonly body: object }

/** An entry as it was sent, never lifted, with the time at which a store received it. */
export type Kept = Sent & { readonly knownAt: string }

/** What to read; every part left out means all. Days are ISO dates, both ends included. */
export interface Span {
  readonly system?: string
  readonly kinds?: readonly EntryKind[]
  readonly from?: string
  readonly to?: string
  /** Those with one of these ids. */
  readonly ids?: readonly string[]
  /** Those that correct one of these entries. */
  readonly replacing?: readonly string[]
  /** Those that came after this receipt; see `received`. */
  readonly after?: number
}

/** What became of the entries sent. */
export interface Appended {
  /** Ids stored now. */
  readonly added: readonly string[]
  /** Ids that were there before; what is stored stays. */
  readonly already: readonly string[]
  /** Those of `already` that say something else than what is stored. */
  readonly differing: readonly string[]
}

/** A part of the log, latest day first; of one day, the latest received first. */
export interface Page {
  readonly entries: readonly Stored[]
  /** Give this as `before` for the next page; absent on the last. */
  readonly next?: string
}

/** A file kept beside the entries, named by what it holds. */
export interface Attachment {
  /** SHA-256 of the bytes, 64 hexadecimal digits. */
  readonly sha256: string
  /** Media type as given by the first who attached it, such as image/jpeg. */
  readonly type: string
  /** Bytes. */
  readonly size: number
}

/**
 * The storage port: the log of one workspace. Everything clever is a pure function above it.
 *
 * Laws, held by the conformance suite: an entry acknowledged is on the disk; an id is stored once,
 * however often it is sent; nothing stored is ever changed, and what was sent is stored as sent;
 * `knownAt` never runs backwards within a system; another workspace's entries are never seen. A row
 * that the disk changed is refused, never read.
 *
 * Every call throws `Refused`, with what to do, where the store cannot be read or written.
 */
export interface Logbook {
  readonly workspace: string
  /**
   * Stores all of a sending or nothing. Order and time of receipt are the store's.
   *
   * @throws Refused when an entry is not one of this program's kinds or belongs to another workspace
   */
  append(entries: readonly Sent[]): Promise<Appended>
  /**
   * Stores entries that another store received, for the import of an export. A system that is not
   * here yet keeps its times of receipt; what a system lacks that is here already comes with the time
   * of now.
   *
   * @param kept  in the order of receipt
   * @throws Refused as `append`, and where a `knownAt` runs backwards within a system
   */
  takeOver(kept: readonly Kept[]): Promise<Appended>
  /** Entries in the order of receipt, at the newest version of their kinds. */
  read(span?: Span): Promise<readonly Stored[]>
  /** The same entries as they were sent, for an export. */
  asSent(span?: Span): Promise<readonly Kept[]>
  /** At most `limit` entries, latest day first. */
  newest(limit: number, span?: Span, before?: string): Promise<Page>
  /** The number of the last receipt: another one tells that an entry came, from whichever program. */
  received(): Promise<number>
  /** Ids of the systems that have an entry, in order. */
  systems(): Promise<readonly string[]>
  /** Keeps a file; the same bytes are kept once, under the first type given. */
  attach(bytes: Uint8Array, type: string): Promise<Attachment>
  /** The file of that name, or undefined where this workspace has none. */
  attachment(sha256: string): Promise<(Attachment & { readonly bytes: Uint8Array }) | undefined>
  /** Every file of this workspace, by name. */
  attachments(): Promise<readonly Attachment[]>
  /** What was cached under a key; a cache may be forgotten at any time and holds no record. */
  cached(key: string): Promise<string | undefined>
  /** Puts a document in the place of what was cached under its key. */
  cache(key: string, document: string): Promise<void>
  forgetCaches(): Promise<void>
  close(): Promise<void>
}

/** An open log, or why it cannot be opened. */
export type Opened =
  | {
      readonly ok: true
      readonly logbook: Logbook
      /** Where the log is kept, for people: "on this machine, in …". */
      readonly kept: string
      /** The file, where the log is one; attachments lie in the folder `attachments` beside it. */
      readonly file?: string
    }
  | { readonly ok: false; readonly issues: readonly Issue[] }

/** Tells the time of receipt. */
export type Clock = () => Date
