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
  /** Latest day first, of one day the latest received. */
  readonly findable: readonly Findable[]
}

/** How many entries are read at a time: a long log need never be in memory as a whole. */
const atOnce = 2000

/**
 * Finds entries by words, in texts that are kept in memory from the first search of a system on.
 *
 * What is kept cannot be stale: an entry never changes, and each search first asks the store for its last
 * receipt, which counts what other programs wrote too, and reads what came since.
 */
export class JournalSearch {
  readonly #logbook: Logbook
  readonly #kept = new Map<string, Kept>()

  constructor(logbook: Logbook) {
    this.#logbook = logbook
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
    const findable = await this.#of(system)
    const last = before === undefined ? -1 : findable.findIndex(({ id }) => id === before)
    if (before !== undefined && last === -1) throw notAPage(before)
    const ids: string[] = []
    for (const { id, kind, day, text } of findable.slice(last + 1)) {
      if (kind === 'retraction') continue
      if (day < from || day > to || kinds?.some((name) => name === kind) === false) continue
      if (!wanted.every((word) => text.includes(word))) continue
      // One more than asked for tells that there is a next page.
      if (ids.length === limit) return { ids, next: ids[limit - 1] }
      ids.push(id)
    }
    return { ids }
  }

  async #of(system: string): Promise<readonly Findable[]> {
    const received = await this.#logbook.received()
    const before = this.#kept.get(system)
    if (before?.received === received) return before.findable
    const findable =
      before === undefined
        ? await this.#readAll(system)
        : withNewer(before.findable, await this.#logbook.read({ system, after: before.received }))
    // Where an entry came meanwhile, what was read may hold it or not: it is used and not kept.
    if ((await this.#logbook.received()) === received) this.#kept.set(system, { received, findable })
    return findable
  }

  async #readAll(system: string): Promise<readonly Findable[]> {
    const findable: Findable[] = []
    let next: string | undefined
    do {
      const page = await this.#logbook.newest(atOnce, { system }, next)
      findable.push(...page.entries.map(findableOf))
      next = page.next
    } while (next !== undefined)
    return findable
  }
}

function findableOf(entry: Stored): Findable {
  const { id, kind, at, batch = '', body } = entry
  const text = [sayEntry(entry), kind, batch, ...stringsIn(body)].join('\n').toLowerCase()
  return { id, kind, day: at.slice(0, 10), text }
}

function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : []
}

/** @param newer  in the order of receipt, all received after the others */
function withNewer(findable: readonly Findable[], newer: readonly Stored[]): readonly Findable[] {
  const first = newer.toReversed().map(findableOf)
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
