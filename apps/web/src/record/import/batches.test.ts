import { composeEntry, type Entry } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import { batchesOf } from './batches.ts'

const note = (text: string): Entry =>
  composeEntry(
    {
      workspace: 'home',
      system: 'reef',
      kind: 'note',
      body: { text },
      at: '2026-03-01',
      precision: 'day',
      by: 'keeper',
      device: 'test',
    },
    new Date('2026-03-01T12:00:00Z'),
  )

test('entries are sent in their order, each once, as many at a time as there is room for', () => {
  const entries = Array.from({ length: 50 }, (_, at) => note('x'.repeat(at * 20)))
  const room = 2000
  const batches = batchesOf(entries, room)
  expect(batches.flat()).toEqual(entries)
  for (const batch of batches)
    expect(batch.reduce((sum, entry) => sum + JSON.stringify(entry).length, 0)).toBeLessThanOrEqual(room)
  expect(batches.length).toBeLessThan(entries.length)
})

test('an entry larger than the room goes alone', () => {
  const [small, large] = [note('a'), note('x'.repeat(5000))]
  expect(batchesOf([small, large, small], 2000)).toEqual([[small], [large], [small]])
  expect(batchesOf([])).toEqual([])
})
