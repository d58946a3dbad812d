import { type JournalLine, journal, type Logbook, type Stored } from '@holdfast/logbook'

interface Kept {
  /** The last receipt of the log when the entries were read. */
  readonly received: number
  readonly stored: readonly Stored[]
  readonly lines: readonly JournalLine[]
}

/**
 * The journals of the systems, kept in memory until an entry comes.
 *
 * What is kept cannot be stale: each asking first asks the store for its last receipt, which also counts
 * what another process wrote, and entries never change once received. So only what came since is read.
 */
export class Journals {
  readonly #logbook: Logbook
  readonly #kept = new Map<string, Kept>()

  constructor(logbook: Logbook) {
    this.#logbook = logbook
  }

  /** The journal of a system, latest day first; undefined where the log has no entry of it. */
  async of(system: string): Promise<readonly JournalLine[] | undefined> {
    const received = await this.#logbook.received()
    const before = this.#kept.get(system)
    if (before?.received === received) return before.lines
    // An entry may come between the two questions; it is read again then, and known by its id.
    const newer = await this.#logbook.read({ system, ...(before && { after: before.received }) })
    const known = new Set(before?.stored.map(({ id }) => id))
    const stored = [...(before?.stored ?? []), ...newer.filter(({ id }) => !known.has(id))]
    if (stored.length === 0) return undefined
    const lines = newer.length === 0 && before !== undefined ? before.lines : journal(stored)
    this.#kept.set(system, { received, stored, lines })
    return lines
  }
}
