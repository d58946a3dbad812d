import { expect, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import type { Stored } from './entry.ts'
import { readEntry } from './read-entry.ts'
import systemSample from './samples/system.v1.json' with { type: 'json' }
import { rivalCorrections, standing } from './standing.ts'
import { systemAt } from './system-at.ts'

const id = (number: number): string => nitrate(number).id
const at = (day: number): string => `2026-02-${String(day).padStart(2, '0')}T08:00:00.000Z`
const numbers = (entries: readonly Stored[]): number[] => entries.map((entry) => Number(entry.id.slice(-3)))

const said = (number: number, day: number, changes: Parameters<typeof nitrate>[1] = {}): Stored => ({
  ...nitrate(number, changes),
  knownAt: at(day),
})
const tookBack = (number: number, day: number, of: 'entry' | 'batch', what: string): Stored => ({
  ...nitrate(number),
  kind: 'retraction',
  body: { of, id: what },
  knownAt: at(day),
})

test('a correction stands in the place of what it corrects, also through a chain', () => {
  const log = [said(1, 1), said(2, 2, { replaces: id(1) }), said(3, 3, { replaces: id(2) }), said(4, 4)]
  expect(numbers(standing(log))).toEqual([3, 4])
})

test('of two corrections of one entry the later received holds, whatever the order of the list', () => {
  const log = [said(1, 1), said(3, 3, { replaces: id(1) }), said(2, 2, { replaces: id(1) })]
  expect(numbers(standing(log))).toEqual([3])
  expect(rivalCorrections(log)).toEqual(new Map([[id(1), [id(2), id(3)]]]))
})

test('the clock of the device decides nothing', () => {
  const log = [
    said(1, 1),
    said(2, 2, { replaces: id(1), madeAt: '2026-01-09T00:00:00Z' }),
    said(3, 3, { replaces: id(1), madeAt: '2020-01-01T00:00:00Z' }),
  ]
  expect(numbers(standing(log))).toEqual([3])
})

test('what is taken back does not stand, nor do its corrections', () => {
  const log = [said(1, 1), said(2, 2, { replaces: id(1) }), said(3, 3), tookBack(9, 4, 'entry', id(1))]
  expect(numbers(standing(log))).toEqual([3])
})

test('taking back a correction brings back what it corrected', () => {
  const log = [said(1, 1), said(2, 2, { replaces: id(1) }), tookBack(9, 3, 'entry', id(2))]
  expect(numbers(standing(log))).toEqual([1])
})

test('one undo takes a whole batch back, and undoing the undo brings it back', () => {
  const batch = { batch: 'import-1' }
  const log = [said(1, 1, batch), said(2, 1, batch), said(3, 1), tookBack(8, 2, 'batch', 'import-1')]
  expect(numbers(standing(log))).toEqual([3])
  expect(numbers(standing([...log, tookBack(9, 3, 'entry', id(8))]))).toEqual([1, 2, 3])
})

const described = (
  number: number,
  day: string,
  knownAt: number,
  temperature_C: number,
  replaces?: string,
): Stored => {
  const read = readEntry({ ...systemSample, id: id(number), at: day, ...(replaces && { replaces }) })
  if (!read.ok || read.entry.kind !== 'system') throw new Error('sample not read')
  const { body } = read.entry
  return { ...read.entry, body: { ...body, system: { ...body.system, temperature_C } }, knownAt: at(knownAt) }
}

test('the system of a day is its latest description up to that day, as far as it was known', () => {
  const log = [
    described(1, '2026-01-01', 1, 24),
    described(2, '2026-03-01', 2, 26),
    described(3, '2026-01-01', 5, 25, id(1)),
  ]
  expect(systemAt(log, '2025-12-31', at(9))).toBeUndefined()
  expect(systemAt(log, '2026-02-01', at(4))?.temperature_C).toBe(24)
  expect(systemAt(log, '2026-02-01', at(5))?.temperature_C).toBe(25)
  expect(systemAt(log, '2026-03-01', at(5))?.temperature_C).toBe(26)
  expect(systemAt(log, '2026-03-01', at(1))?.temperature_C).toBe(24)
})
