import { expect, test } from 'vitest'
import { describedOn } from './described-on.ts'
import type { Stored } from './entries/entry.ts'
import { readEntry } from './entries/read-entry.ts'
import systemSample from './entries/samples/system.v1.json' with { type: 'json' }

/** A description from a day on; its temperature tells it apart. */
function described(at: string, temperature_C: number): Stored {
  const read = readEntry({ ...systemSample, at })
  if (!read.ok || read.entry.kind !== 'system') throw new Error('sample not read')
  const body = { ...read.entry.body, system: { ...read.entry.body.system, temperature_C } }
  return {
    ...read.entry,
    id: `018f3a1e-7c00-7000-8000-0000000000${temperature_C}`,
    body,
    knownAt: '2026-06-01T08:00:00.000Z',
  }
}

test('an entry is read with the description of its day, and one from before the first with the first', async () => {
  const stored = [described('2026-03-01', 26), described('2026-02-01', 24)]
  const on = async (day: string): Promise<number | undefined> =>
    (await describedOn({ read: async () => stored }, 'reef', day))?.temperature_C
  expect(await on('2025-12-31')).toBe(24)
  expect(await on('2026-02-28')).toBe(24)
  expect(await on('2026-03-01')).toBe(26)
  expect(await describedOn({ read: async () => [] }, 'reef', '2026-03-01')).toBeUndefined()
})
