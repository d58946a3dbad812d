import { expect, test } from 'vitest'
import { newId } from './new-entry.ts'

test('ids are UUIDs of version 7: the time they were made, and no two alike', () => {
  const now = new Date('2026-03-01T08:10:00.123Z')
  const ids = Array.from({ length: 1000 }, () => newId(now))
  expect(new Set(ids).size).toBe(1000)
  for (const id of ids) {
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
    expect(Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16)).toBe(now.getTime())
  }
})
