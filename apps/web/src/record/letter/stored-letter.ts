import { type BodyOf, type Entry, type JournalLine, readSystemFile } from '@holdfast/logbook'
import { fetchOfKind } from '../../shell/system-data.ts'
import type { Letter } from './paragraph.ts'

/** The letter that holds today, with the entries it stands in and what the log says beside it. */
export interface StoredLetter {
  /** Undefined where the system was described otherwise than by a letter or a file. */
  readonly letter: Letter | undefined
  readonly entry: Entry
  /** Every entry that describes the system, so that it can be put away as a whole. */
  readonly descriptions: readonly Entry[]
  readonly lines: readonly JournalLine[]
}

/** Kinds that have something to say about a letter, and how many of each are enough. */
const beside = { reading: 100, 'water-change': 8, feeding: 20, survey: 40 } as const

/** @throws Error with a sentence for the page */
export async function fetchLetter(system: string, today: string): Promise<StoredLetter | undefined> {
  const asked = Object.entries({ system: 200, ...beside }) as [keyof typeof beside | 'system', number][]
  const lines = (await Promise.all(asked.map(([kind, limit]) => fetchOfKind(system, kind, limit)))).flat()
  const descriptions = lines.flatMap(({ entry, state }) =>
    entry.kind === 'system' && state === 'holds' ? [entry] : [],
  )
  // The latest day comes first; before the first description its own holds.
  const entry = descriptions.find(({ at }) => at.slice(0, 10) <= today) ?? descriptions.at(-1)
  return entry && { letter: letterOf(entry), entry, descriptions, lines }
}

function letterOf({ body }: Entry): Letter | undefined {
  const { document } = body as BodyOf<'system'>
  // What was read as a system file once is one: the schema gives it its type back.
  return readSystemFile(JSON.stringify(document)).ok ? (document as unknown as Letter) : undefined
}
