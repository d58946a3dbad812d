import type { EntryKind, Stored } from './entries/entry.ts'
import type { JournalLine } from './entries/journal.ts'
import { linesOf } from './journal-lines.ts'
import type { JournalSearch } from './journal-search.ts'
import type { Logbook, Span } from './logbook.ts'

/** Which lines of a journal are asked for; every part left out means all. Days are ISO dates, both included. */
export interface JournalQuestion {
  readonly system: string
  readonly kind?: EntryKind
  readonly from?: string
  readonly to?: string
  /** Each of these words must be somewhere in what an entry says or in what was typed; case does not count. */
  readonly words?: string
  /** The `next` of the page before. */
  readonly before?: string
  /** How many lines at most. */
  readonly limit: number
}

export interface JournalPage {
  readonly lines: readonly JournalLine[]
  /** Give this as `before` for the next page; absent on the last. */
  readonly next?: string
}

/**
 * A part of the journal of a system: every entry but retractions with what became of it, the latest day
 * first and of one day the latest received. It costs the same in a log of ten entries and of a hundred
 * thousand, but for the first search.
 *
 * @throws Refused where `before` is the `next` of no page, or the store cannot be read
 */
export async function journalPage(
  logbook: Logbook,
  question: JournalQuestion,
  search: JournalSearch,
): Promise<JournalPage> {
  const { system, kind, from, to, words = '', before, limit } = question
  const span: Span = {
    system,
    ...(kind !== undefined && { kinds: [kind] }),
    ...(from !== undefined && { from }),
    ...(to !== undefined && { to }),
  }
  if (words.trim() === '') return newestLines(logbook, span, limit, before)
  const { ids, next } = await search.find(span, words, limit, before)
  const found = new Map((await logbook.read({ ids })).map((entry) => [entry.id, entry]))
  const entries = ids.flatMap((id): readonly Stored[] => {
    const entry = found.get(id)
    return entry === undefined ? [] : [entry]
  })
  return { lines: await linesOf(logbook, entries), ...(next !== undefined && { next }) }
}

/** Retractions are no lines of their own: a page has fewer than its limit where some stand in it. */
async function newestLines(
  logbook: Logbook,
  span: Span,
  limit: number,
  before: string | undefined,
): Promise<JournalPage> {
  const { entries, next } = await logbook.newest(limit, span, before)
  const told = entries.filter(({ kind }) => kind !== 'retraction')
  if (told.length === 0 && next !== undefined) return newestLines(logbook, span, limit, next)
  return { lines: await linesOf(logbook, told), ...(next !== undefined && { next }) }
}
