import type { JournalLine } from '@holdfast/logbook'
import { fetchOfKind } from '../shell/system-data.ts'

/** Kinds that say how a system is, and how many of each are enough for it. */
const asked = { reading: 60, survey: 1, 'water-change': 1 } as const

/** The latest entries that say how a system is. @throws Error with a sentence for the page */
export async function fetchLatest(system: string): Promise<readonly JournalLine[]> {
  const kinds = Object.entries(asked) as [keyof typeof asked, number][]
  return (await Promise.all(kinds.map(([kind, limit]) => fetchOfKind(system, kind, limit)))).flat()
}
