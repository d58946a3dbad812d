import { expect, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import type { Stored } from './entry.ts'
import { journal } from './journal.ts'

const id = (number: number): string => nitrate(number).id
const said = (number: number, at: string, changes: Partial<Stored> = {}): Stored =>
  ({
    ...nitrate(number, { at, precision: at.length > 10 ? 'minute' : 'day' }),
    knownAt: `2026-02-01T08:00:${String(number).padStart(2, '0')}.000Z`,
    ...changes,
  }) as Stored
const fed = (number: number, at: string, g_per_day: number): Stored =>
  said(number, at, { kind: 'feeding', body: { g_per_day, text: '' } })
const undone = (number: number, of: number): Stored =>
  said(number, '2026-02-01', { kind: 'retraction', body: { of: 'entry', id: id(of) } })

test('the latest day comes first, of a day the latest time, of one time the later received', () => {
  const log = [
    said(1, '2026-01-04'),
    said(2, '2026-01-05'),
    said(3, '2026-01-04T08:00+01:00[Europe/Berlin]'),
    said(4, '2026-01-04T20:00+01:00[Europe/Berlin]'),
    said(5, '2026-01-05'),
  ]
  expect(journal(log).map(({ entry }) => Number(entry.id.slice(-3)))).toEqual([5, 2, 4, 3, 1])
})

test('nothing is hidden: what was corrected and what was taken back says by what', () => {
  const log = [
    said(1, '2026-01-04'),
    said(2, '2026-01-04', { replaces: id(1) }),
    said(3, '2026-01-04'),
    undone(4, 3),
  ]
  const lines = journal(log).map(({ entry, state, by }) => [Number(entry.id.slice(-3)), state, by])
  expect(lines).toEqual([
    [3, 'taken back', id(4)],
    [2, 'holds', undefined],
    [1, 'corrected', id(2)],
  ])
})

test('two corrections of one entry name each other, and what corrects the loser stands no more than it', () => {
  const log = [
    said(1, '2026-01-04'),
    said(2, '2026-01-04', { replaces: id(1) }),
    said(3, '2026-01-04', { replaces: id(1) }),
    said(4, '2026-01-04', { replaces: id(2) }),
  ]
  const lines = new Map(journal(log).map((line) => [line.entry.id, line]))
  expect(lines.get(id(3))).toMatchObject({ state: 'holds', rivals: [id(2)] })
  expect(lines.get(id(2))).toMatchObject({ state: 'corrected', by: id(4), rivals: [id(3)] })
  expect(lines.get(id(4))).toMatchObject({ state: 'corrected', by: id(3), rivals: [] })
})

test('two rations told for one day name each other; two readings of a day are simply two', () => {
  const log = [fed(1, '2026-01-04', 4), fed(2, '2026-01-04', 5), fed(3, '2026-01-05', 6)]
  expect(journal(log).map(({ rivals }) => rivals)).toEqual([[], [id(1)], [id(2)]])
  const readings = [said(1, '2026-01-04'), said(2, '2026-01-04')]
  expect(journal(readings).map(({ rivals }) => rivals)).toEqual([[], []])
})

test('an entry that says it corrects itself, and a circle of corrections, are kept and stand', () => {
  const log = [
    said(1, '2026-01-04', { replaces: id(1) }),
    said(2, '2026-01-04', { replaces: id(3) }),
    said(3, '2026-01-04', { replaces: id(2) }),
  ]
  expect(journal(log).map(({ state }) => state)).toEqual(['holds', 'holds', 'holds'])
})

test('a reading is said with the unit of its column, words as they were written', () => {
  const [line] = journal([said(1, '2026-01-04')])
  expect(line.says).toBe('Nitrate 1 mg/L NO3')
})
