import { expect, test } from 'vitest'

import { composeEntry } from './compose-entry.ts'
import { readEntry } from './read-entry.ts'

const parts = {
  workspace: 'home',
  system: 'reef',
  kind: 'note',
  body: { text: 'all well' },
  at: '2026-03-01',
  precision: 'day',
  by: 'keeper',
  device: 'telephone',
} as const
const now = new Date('2026-03-01T08:10:00.123Z')

test('ids are UUIDs of version 7: the time they were made, and no two alike', () => {
  const ids = Array.from({ length: 1000 }, () => composeEntry(parts, now).id)
  expect(new Set(ids).size).toBe(1000)
  for (const id of ids) {
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
    expect(Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16)).toBe(now.getTime())
  }
})

test('what is composed is an entry at the newest version of its kind, written down now', () => {
  const entry = composeEntry({ ...parts, replaces: '018f3a1e-7c00-7000-8000-000000000001' }, now)
  expect(readEntry(entry)).toEqual({ ok: true, entry })
  expect(entry).toMatchObject({ v: 1, madeAt: '2026-03-01T08:10:00.123Z' })
})
