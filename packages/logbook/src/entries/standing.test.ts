import { expect, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import type { Stored } from './entry.ts'
import { rivalCorrections, standing } from './standing.ts'

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

test('a retraction counts when it comes before what it takes back, and so does a correction', () => {
  const undoFirst = [tookBack(9, 1, 'entry', id(1)), said(2, 2, { replaces: id(1) }), said(1, 3), said(3, 4)]
  expect(numbers(standing(undoFirst))).toEqual([3])
  expect(numbers(standing([said(2, 1, { replaces: id(1) }), said(1, 2)]))).toEqual([2])
  expect(
    numbers(standing([said(3, 1, { replaces: id(2) }), said(2, 2, { replaces: id(1) }), said(1, 3)])),
  ).toEqual([3])
})

test('an entry of a batch that comes after the batch was taken back is taken back with it', () => {
  const batch = { batch: 'import-1' }
  expect(numbers(standing([tookBack(8, 1, 'batch', 'import-1'), said(1, 2, batch), said(3, 3)]))).toEqual([3])
})

test('an undo of the undo of an undo takes back again', () => {
  const log = [
    said(1, 1),
    tookBack(7, 2, 'entry', id(1)),
    tookBack(8, 3, 'entry', id(7)),
    tookBack(9, 4, 'entry', id(8)),
  ]
  expect([2, 3, 4].map((length) => numbers(standing(log.slice(0, length))).length)).toEqual([0, 1, 0])
})

test('retractions that take back each other take nothing', () => {
  const log = [said(1, 1), tookBack(7, 2, 'entry', id(8)), tookBack(8, 3, 'entry', id(7)), said(2, 4)]
  expect(numbers(standing(log))).toEqual([1, 2])
})
