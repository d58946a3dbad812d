import type { Stored } from './entries/entry.ts'
import { type JournalLine, journal } from './entries/journal.ts'
import type { Logbook } from './logbook.ts'

/**
 * What became of some entries of a system, without the rest of its log: only what can have a say in it is
 * read, which are the corrections they are tied to and the retractions.
 *
 * @param entries  of one system, no retractions among them
 * @returns a line for each, in their order
 */
export async function linesOf(
  logbook: Pick<Logbook, 'read'>,
  entries: readonly Stored[],
): Promise<readonly JournalLine[]> {
  const [first] = entries
  if (first === undefined) return []
  const { system } = first
  const tied = await tiedTo(logbook, entries)
  // Of corrections that came in one sending only the order of the store tells the later.
  const all = tied.size === entries.length ? entries.toReversed() : await logbook.read({ ids: [...tied] })
  const retractions = await logbook.read({ system, kinds: ['retraction'] })
  const lines = new Map(journal([...all, ...retractions]).map((line) => [line.entry.id, line]))
  return entries.flatMap(({ id }) => lines.get(id) ?? [])
}

/** What became of one entry; undefined where the log has no such entry, or it is a retraction. */
export async function lineOf(logbook: Pick<Logbook, 'read'>, id: string): Promise<JournalLine | undefined> {
  const [entry] = await logbook.read({ ids: [id] })
  if (entry === undefined || entry.kind === 'retraction') return undefined
  const [line] = await linesOf(logbook, [entry])
  return line
}

/** Ids of the entries and of all that corrects them or is corrected by them, directly or through others. */
async function tiedTo(
  logbook: Pick<Logbook, 'read'>,
  entries: readonly Stored[],
): Promise<ReadonlySet<string>> {
  const tied = new Set(entries.map(({ id }) => id))
  for (let found = entries; found.length > 0; ) {
    const targets = found.flatMap(({ replaces }) => (replaces === undefined ? [] : [replaces]))
    const corrected = targets.filter((id) => !tied.has(id))
    // What a correction corrects may not have come yet; others may correct it all the same.
    const replacing = await logbook.read({ replacing: [...found.map(({ id }) => id), ...targets] })
    const before = corrected.length === 0 ? [] : await logbook.read({ ids: corrected })
    found = [...replacing, ...before].filter(({ id, kind }) => kind !== 'retraction' && !tied.has(id))
    for (const { id } of found) tied.add(id)
  }
  return tied
}
