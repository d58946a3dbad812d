import type { Entry, JournalLine } from '@holdfast/logbook'
import type { Described } from '../../shell/described.ts'
import type { SystemName } from '../../shell/system-data.ts'
import { retractionOf } from '../log/writer.ts'

/** What the server is asked about an import. */
export interface AskLog {
  readonly systems: () => Promise<readonly SystemName[]>
  /** Lines of a system that hold these words. */
  readonly lines: (system: string, words: string) => Promise<readonly JournalLine[]>
}

/**
 * What takes back, or brings back, the part of an import that other systems than the shown one have: one sheet may
 * tell of several tanks. What was taken back by itself stays so.
 *
 * @throws Error with a sentence for the page where the log does not answer
 */
export async function inOtherSystems(
  described: Described,
  batch: string,
  did: 'taken back' | 'brought back',
  { systems, lines }: AskLog,
): Promise<readonly Entry[]> {
  const others = (await systems()).filter(({ id }) => id !== described.system.id)
  const found = await Promise.all(
    others.map(async ({ id }) => {
      const own = (await lines(id, batch)).filter(({ entry }) => entry.batch === batch)
      const there = { ...described, system: { ...described.system, id } }
      if (did === 'taken back')
        return own.some(({ state }) => state !== 'taken back') ? [retractionOf(there, 'batch', batch)] : []
      const by = takenBackBy(own)
      return by === undefined ? [] : [retractionOf(there, 'entry', by)]
    }),
  )
  return found.flat()
}

/** What took back all of these at once, if anything did. */
export const takenBackBy = (lines: readonly JournalLine[]): string | undefined =>
  lines.every(({ state, by }) => state === 'taken back' && by === lines[0]?.by) ? lines[0]?.by : undefined
