import type { EntryKind } from './entries/entry.ts'
import type { JournalLine } from './entries/journal.ts'

/** Which lines of a journal are asked for; every part left out means all. Days are ISO dates, both included. */
export interface JournalQuestion {
  readonly kind?: EntryKind
  readonly from?: string
  readonly to?: string
  /** Each of these words must be somewhere in what an entry says or in what was typed; case does not count. */
  readonly words?: string
  /** The `next` of the page before. */
  readonly before?: string
  readonly limit: number
}

export interface JournalPage {
  readonly lines: readonly JournalLine[]
  /** Give this as `before` for the next page; absent on the last. */
  readonly next?: string
}

/**
 * A part of a journal, in its order.
 *
 * @returns undefined where `before` names no line of it
 */
export function journalPage(
  journal: readonly JournalLine[],
  { kind, from, to, words = '', before, limit }: JournalQuestion,
): JournalPage | undefined {
  const last = before === undefined ? -1 : journal.findIndex(({ entry }) => entry.id === before)
  if (before !== undefined && last === -1) return undefined
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean)
  const lines: JournalLine[] = []
  for (const line of journal.slice(last + 1)) {
    const day = line.entry.at.slice(0, 10)
    if (kind !== undefined && line.entry.kind !== kind) continue
    if ((from !== undefined && day < from) || (to !== undefined && day > to)) continue
    if (!wanted.every((word) => searched(line).includes(word))) continue
    // One more than asked for tells that there is a next page.
    if (lines.length === limit) return { lines, next: lines[limit - 1].entry.id }
    lines.push(line)
  }
  return { lines }
}

const texts = new WeakMap<JournalLine, string>()

/** All that can be searched of a line, in small letters; kept, since a search asks it of every line. */
function searched(line: JournalLine): string {
  const known = texts.get(line)
  if (known !== undefined) return known
  const { kind, batch = '', body } = line.entry
  const text = [line.says, kind, batch, ...stringsIn(body)].join('\n').toLowerCase()
  texts.set(line, text)
  return text
}

function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : []
}
