import type { Entry } from '@holdfast/logbook'
import { forget, keep, kept, namesKept, type Store } from '../../shell/browser-store.ts'

/** An entry on its way to the log. It is kept in the browser until the log has it. */
export interface Waiting {
  readonly entry: Entry
  /** What stood in the blanks, so that it can be mended where the log refuses it. */
  readonly typed: Readonly<Record<string, string>>
  /** Why the log refused it; it is not sent again then. */
  readonly refused?: readonly string[]
}

/** What became of an entry that was sent. */
export type Receipt =
  | { readonly is: 'stored' }
  | { readonly is: 'refused'; readonly issues: readonly string[] }
  /** Nobody knows whether it arrived; the same id is sent again. */
  | { readonly is: 'no answer' }

export type Send = (entry: Entry) => Promise<Receipt>

/**
 * Entries that the log has not acknowledged. Each has a name of its own in the browser's store, so
 * that two tabs never write over each other, and leaves only at the log's word or the keeper's.
 */
export interface Outbox {
  /** In the order in which they were made; the same array as long as nothing changes. */
  readonly waiting: () => readonly Waiting[]
  /** Takes an entry. Where the browser cannot keep it, it lives as long as the page. */
  readonly put: (waiting: Waiting) => void
  /** Whether the browser's store would not take something that still waits. */
  readonly unkept: () => boolean
  /** Sends all that was not refused, one after the other. @returns false where the log did not answer */
  readonly send: () => Promise<boolean>
  /** Takes back an entry that the log refused. */
  readonly drop: (id: string) => void
  /** Called after every change; another tab's count too. @returns the way out */
  readonly watch: (changed: () => void) => () => void
  /** Reads the store anew, where another tab wrote. */
  readonly refresh: () => void
}

const beginning = 'holdfast.waiting.'

export function openOutbox(send: Send, store: Store = localStorage): Outbox {
  const watchers = new Set<() => void>()
  /** What the browser's store would not take. */
  const here = new Map<string, Waiting>()
  /** What the log has, should the store not let go of it. */
  const gone = new Set<string>()
  let all: readonly Waiting[] = []
  let sending: Promise<boolean> | undefined

  const refresh = () => {
    const stored = namesKept(beginning, store).flatMap((name) => {
      const found = kept(name, store)
      return isWaiting(found) ? [found] : []
    })
    all = [...stored, ...here.values()]
      .filter(({ entry }) => !gone.has(entry.id))
      .toSorted((a, b) => (a.entry.id < b.entry.id ? -1 : 1))
    for (const changed of watchers) changed()
  }
  const put = (waiting: Waiting) => {
    const { id } = waiting.entry
    if (keep(beginning + id, waiting, store)) here.delete(id)
    else here.set(id, waiting)
    refresh()
  }
  const drop = (id: string) => {
    forget(beginning + id, store)
    here.delete(id)
    gone.add(id)
    refresh()
  }
  const sendAll = async (): Promise<boolean> => {
    // One at a time, so that a refusal stops nothing else; what is put in meanwhile goes along.
    for (;;) {
      const next = all.find(({ refused }) => refused === undefined)
      if (next === undefined) return true
      const receipt = await send(next.entry)
      if (receipt.is === 'no answer') return false
      if (receipt.is === 'stored') drop(next.entry.id)
      else put({ ...next, refused: receipt.issues })
    }
  }
  refresh()
  return {
    waiting: () => all,
    unkept: () => here.size > 0,
    put,
    drop,
    refresh,
    send: () => {
      sending ??= sendAll().finally(() => {
        sending = undefined
      })
      return sending
    },
    watch: (changed) => {
      watchers.add(changed)
      return () => watchers.delete(changed)
    },
  }
}

/** Written by this page, perhaps by an older one: enough is checked to send it, the log checks the rest. */
function isWaiting(value: unknown): value is Waiting {
  const entry = typeof value === 'object' && value !== null ? Reflect.get(value, 'entry') : undefined
  return typeof entry === 'object' && entry !== null && typeof Reflect.get(entry, 'id') === 'string'
}
