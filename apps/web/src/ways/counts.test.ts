import { expect, test } from 'vitest'
import { counted } from './counts.ts'

test('things are counted in words where there is one, and with thousands apart where there are many', () => {
  expect(counted(1, 'reading')).toBe('one reading')
  expect(counted(0, 'entry', 'entries')).toBe('0 entries')
  expect(counted(1842, 'entry', 'entries')).toBe('1842 entries')
  expect(counted(100_000, 'entry', 'entries')).toBe('100\u202f000 entries')
})
