import { expect, test } from 'vitest'
import type { Stored } from './entries/entry.ts'
import { salinityOfLate } from './salinity-of-late.ts'

const asOf = Date.UTC(2026, 4, 31) / 86_400_000

const read = (at: string, quantity: string, value: number | null): Stored =>
  ({ id: at, kind: 'reading', at, body: { quantity, value, belowDetection: false } }) as unknown as Stored

test('the last reading of salinity within six weeks is the one of late, whatever the order of receipt', () => {
  const entries = [
    read('2026-05-20T10:00', 'salinity', 36.8),
    read('2026-05-02T10:00', 'salinity', 35.1),
    read('2026-05-30T10:00', 'nitrate', 5),
  ]
  expect(salinityOfLate(entries, asOf, 'UTC')).toBe(36.8)
})

test('an old reading, or none, says nothing', () => {
  expect(salinityOfLate([read('2026-03-02T10:00', 'salinity', 36)], asOf, 'UTC')).toBeUndefined()
  expect(salinityOfLate([], asOf, 'UTC')).toBeUndefined()
})
