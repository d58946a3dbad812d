import { outcome } from '@holdfast/client'
import type { JournalLine } from '@holdfast/logbook'
import { api, told } from '../shell/api.ts'

/** Kinds that say how a system is, and how many of each are enough for it. */
const asked = { reading: 60, survey: 1, 'water-change': 1 } as const

/** The latest entries that say how a system is. @throws Error with a sentence for the page */
export async function fetchLatest(system: string): Promise<readonly JournalLine[]> {
  const lists = await Promise.all(
    Object.entries(asked).map(async ([kind, limit]) => {
      const query = { kind: kind as keyof typeof asked, limit }
      const path = { system }
      return told(await outcome(api.GET('/api/systems/{system}/entries', { params: { path, query } }))).lines
    }),
  )
  return lists.flat()
}
