import { sayEntry } from './entries/draft-entry.ts'
import type { Stored } from './entries/entry.ts'
import { Refused } from './issue.ts'
import type { Logbook, Span } from './logbook.ts'

/** What can be found of an entry, in small letters. */
interface Findable {
  readonly id: string
  readonly kind: string
  readonly day: string
  readonly text: string
}

interface Kept {
  /** The last receipt of the log when these were read. */
  readonly received: number
  /** Latest day first, of one day the latest received; as far back as any search had to look. */
  readonly findable: readonly Findable[]
  /** Where the reading goes on; absent once all is read. */
  readonly rest?: string
}

/** How many entries are read at a time: a long log need never be in memory as a whole. */
const atOnce = 2000

/**
 * Finds entries by words, in texts that are kept in memory from the first search of a system on. A search
 * reads no further back than it must: what is often written down is found at once in the longest log.
 *
 * What is kept cannot be stale: an entry never changes, and each search first asks the store for its last
 * receipt, which counts what other programs wrote too, and reads what came since.
 */
export class JournalSearch {
  readonly #logbook: Logbook
  readonly #named: (says: string) => string
  readonly #kept = new Map<string, Kept>()
  /** Of two searches at a time the second waits for what the first reads. */
  readonly #reading = new WeakMap<Kept, Promise<Kept>>()

  /** @param named  keys in a sentence as people read them, so that what stands on a page is found as it stands there */
  constructor(logbook: Logbook, named: (says: string) => string = (says) => says) {
    this.#logbook = logbook
    this.#named = named
  }

  /**
   * The ids of entries in which each of the words is found, latest day first.
   *
   * @param before  `next` of the page before
   * @throws Refused where `before` is no entry of the system
   */
  async find(
    { system = '', kinds, from = '', to = '9999' }: Span,
    words: string,
    limit: number,
    before?: string,
  ): Promise<{ readonly ids: readonly string[]; readonly next?: string }> {
    const wanted = words.toLowerCase().split(/\s+/).filter(Boolean)
    const isFound = ({ kind, day, text }: Findable): boolean =>
      kind !== 'retraction' &&
      day >= from &&
      day <= to &&
      kinds?.some((name) => name === kind) !== false &&
      wanted.every((word) => text.includes(word))
    const ids: string[] = []
    let kept = await this.#of(system)
    let isPast = before === undefined
    for (let place = 0; ; place++) {
      if (place === kept.findable.length) {
        if (kept.rest === undefined) break
        kept = await this.#readOn(system, kept)
        if (place === kept.findable.length) break
      }
      const one = kept.findable[place]
      if (isPast && isFound(one)) {
        // One more than asked for tells that there is a next page.
        if (ids.length === limit) return { ids, next: ids[limit - 1] }
        ids.push(one.id)
      }
      isPast ||= one.id === before
    }
    if (!isPast) throw notAPage(before ?? '')
    return { ids }
  }

  /** What was read of a system, with what came since. */
  async #of(system: string): Promise<Kept> {
    const received = await this.#logbook.received()
    const before = this.#kept.get(system)
    if (before === undefined) return this.#readOn(system, { received, findable: [], rest: '' })
    if (before.received === received) return before
    const newer = await this.#logbook.read({ system, after: before.received })
    // Another search may have read the same meanwhile.
    const now = this.#kept.get(system)
    if (now?.received === received) return now
    const kept = {
      ...before,
      received,
      findable: withNewer(before, newer, (entries) => this.#findable(entries)),
    }
    this.#kept.set(system, kept)
    return kept
  }

  #readOn(system: string, kept: Kept): Promise<Kept> {
    const before = this.#reading.get(kept)
    if (before !== undefined) return before
    const reading = this.#readPage(system, kept)
    this.#reading.set(kept, reading)
    return reading
  }

  #findable(entries: readonly Stored[]): readonly Findable[] {
    return entries.map((entry) => {
      const { id, kind, at, batch = '', body } = entry
      const says = sayEntry(entry)
      const text = [says, this.#named(says), kind, batch, ...stringsIn(body)].join('\n').toLowerCase()
      return { id, kind, day: at.slice(0, 10), text }
    })
  }

  async #readPage(system: string, kept: Kept): Promise<Kept> {
    const { entries, next } = await this.#logbook.newest(atOnce, { system }, kept.rest || undefined)
    const { rest: _before, ...same } = kept
    const findable = [...kept.findable, ...this.#findable(entries)]
    const further = { ...same, findable, ...(next !== undefined && { rest: next }) }
    // Another search may have read what came meanwhile; then this one's pages are its own.
    const now = this.#kept.get(system)
    if (now === undefined || now === kept) this.#kept.set(system, further)
    return further
  }
}

function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : []
}

/**
 * What came since, at its place. Entries of days that no search has read yet are left to be read with them.
 *
 * @param newer  in the order of receipt, all received after the others
 */
function withNewer(
  { findable, rest }: Kept,
  newer: readonly Stored[],
  findableOf: (entries: readonly Stored[]) => readonly Findable[],
): readonly Findable[] {
  const reach = rest === undefined ? '' : (findable.at(-1)?.day ?? '')
  // A page that was read after an entry had come holds it already.
  const there = new Set(findable.map(({ id }) => id))
  const first = findableOf(
    newer.toReversed().filter(({ id, at }) => !there.has(id) && at.slice(0, 10) >= reach),
  )
  // The sort is stable, so that of one day the later received stay first.
  return [...first, ...findable].sort((a, b) => (a.day > b.day ? -1 : a.day < b.day ? 1 : 0))
}

const notAPage = (before: string): Refused =>
  new Refused([
    {
      code: 'not-a-page',
      where: 'Page before',
      got: `"${before}" is no entry of this system`,
      accepted: 'The mark that the page before gave as its next.',
      next: 'Begin with the first page.',
    },
  ])
