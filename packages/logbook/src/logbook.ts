import type { Entry, EntryKind, Stored } from './entries/entry.ts'

/** What to read; every part left out means all. Days are ISO dates, both ends included. */
export interface Span {
  readonly system?: string
  readonly kinds?: readonly EntryKind[]
  readonly from?: string
  readonly to?: string
}

/** What became of the entries sent. */
export interface Appended {
  /** Ids stored now. */
  readonly added: readonly string[]
  /** Ids that were there before; what is stored stays. */
  readonly already: readonly string[]
  /** Those of `already` whose body differs from the one stored. */
  readonly differing: readonly string[]
}

/**
 * The storage port: the log of one workspace. Everything clever is a pure function above it.
 *
 * Laws, held by the conformance suite: an entry acknowledged is on the disk; an id is stored once,
 * however often it is sent; nothing stored is ever changed; `knownAt` never runs backwards; another
 * workspace's entries are never seen.
 */
export interface Logbook {
  readonly workspace: string
  /** @throws Refused when an entry belongs to another workspace or the store cannot write. */
  append(entries: readonly Entry[]): Promise<Appended>
  /** Entries in the order of receipt, at the newest version of their kinds. */
  read(span?: Span): Promise<readonly Stored[]>
  /** Ids of the systems that have an entry, in order. */
  systems(): Promise<readonly string[]>
  close(): Promise<void>
}
