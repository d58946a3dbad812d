import { expect, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import type { BodyOf, Stored } from './entry.ts'
import { factsAt } from './facts-at.ts'
import { readEntry } from './read-entry.ts'
import systemSample from './samples/system.v1.json' with { type: 'json' }
import { systemAt, zoneOn } from './system-at.ts'

const id = (number: number): string => nitrate(number).id
const received = (day: number): string => `2026-06-${String(day).padStart(2, '0')}T08:00:00.000Z`
const later = received(30)

interface Told {
  readonly tells?: 'change' | 'mend'
  readonly replaces?: string
  readonly timeZone?: string
}

/** The description numbered so, received on the day of June of that number; its temperature tells it apart. */
function described(number: number, at: string, temperature_C: number, told: Told = {}): Stored {
  const { tells = 'change', replaces, timeZone = 'Europe/Berlin' } = told
  const read = readEntry({ ...systemSample, id: id(number), at, ...(replaces && { replaces }) })
  if (!read.ok || read.entry.kind !== 'system') throw new Error('sample not read')
  const system = { ...read.entry.body.system, temperature_C, timeZone }
  return { ...read.entry, body: { ...read.entry.body, tells, system }, knownAt: received(number) }
}

const temperatures = (log: readonly Stored[], knownAt = later): (number | undefined)[] =>
  ['2026-01-01', '2026-02-01', '2026-03-01', '2026-04-01'].map(
    (day) => systemAt(log, day, knownAt)?.temperature_C,
  )

test('a change holds from its day on, and nothing is known before the first', () => {
  const log = [described(1, '2026-02-01', 24), described(2, '2026-03-01', 26)]
  expect(temperatures(log)).toEqual([undefined, 24, 26, 26])
})

test('a mend holds from the day of the statement it replaces, whatever day it was told for', () => {
  const log = [
    described(1, '2026-02-01', 24),
    described(2, '2026-03-01', 26),
    described(3, '2026-06-03', 25, { tells: 'mend', replaces: id(1) }),
  ]
  expect(temperatures(log)).toEqual([undefined, 25, 26, 26])
  expect(temperatures(log, received(2))).toEqual([undefined, 24, 26, 26])
})

test('a mend that names no statement mends the change that held on its day, in any order of arrival', () => {
  const [first, second] = [described(1, '2026-02-01', 24), described(3, '2026-03-01', 26)]
  const mend = described(2, '2026-03-15', 25, { tells: 'mend' })
  expect(temperatures([first, mend, second])).toEqual([undefined, 24, 25, 25])
  expect(
    temperatures([first, { ...second, knownAt: received(2) }, { ...mend, knownAt: received(3) }]),
  ).toEqual([undefined, 24, 25, 25])
})

test('a mend of a mend holds from the day of what both mend', () => {
  const log = [
    described(1, '2026-02-01', 24),
    described(2, '2026-06-02', 25, { tells: 'mend', replaces: id(1) }),
    described(3, '2026-06-03', 23, { tells: 'mend', replaces: id(2) }),
  ]
  expect(temperatures(log)).toEqual([undefined, 23, 23, 23])
})

test('a change that replaces a change corrects its day as well', () => {
  const log = [described(1, '2026-02-01', 24), described(2, '2026-03-01', 24, { replaces: id(1) })]
  expect(temperatures(log)).toEqual([undefined, undefined, 24, 24])
})

test('a mend of what nobody told yet holds from its own day', () => {
  expect(temperatures([described(1, '2026-03-01', 25, { tells: 'mend' })])).toEqual([
    undefined,
    undefined,
    25,
    25,
  ])
})

test('a system that moved has dates in the zone of each place, those before it was described in the first', () => {
  expect(zoneOn([])).toBeUndefined()
  const zone = zoneOn([
    described(1, '2026-02-01', 24, { timeZone: 'Europe/Berlin' }),
    described(2, '2026-03-01', 24, { timeZone: 'America/Chicago' }),
  ])
  expect(['2025-12-01', '2026-02-28', '2026-03-01'].map((date) => zone?.(date))).toEqual([
    'Europe/Berlin',
    'Europe/Berlin',
    'America/Chicago',
  ])
})

/** An own value numbered so, received on the day of June of that number. */
function own(number: number, at: string, fact: string, typical: number, more: Partial<Stored> = {}): Stored {
  const body: BodyOf<'fact-override'> = { fact, low: 0, typical, high: 9, unit: 'd⁻¹', reason: 'measured' }
  return {
    ...nitrate(number, { at }),
    kind: 'fact-override',
    body,
    knownAt: received(number),
    ...more,
  } as Stored
}
const typicalOf = (log: readonly Stored[], day: string, knownAt = later, fact = 'foam.k.tank') =>
  factsAt(log, day, knownAt).get(fact)?.typical

test('an own value of a fact holds from its day on until another is told, as far as it was known', () => {
  const log = [own(1, '2026-02-01', 'foam.k.tank', 2), own(2, '2026-03-01', 'foam.k.tank', 3)]
  expect(['2026-01-31', '2026-02-01', '2026-03-01'].map((day) => typicalOf(log, day))).toEqual([
    undefined,
    2,
    3,
  ])
  expect(typicalOf(log, '2026-03-01', received(1))).toBe(2)
})

test('own values of two facts leave each other alone, and one taken back gives way to the catalogue', () => {
  const log = [own(1, '2026-02-01', 'foam.k.tank', 2), own(2, '2026-02-01', 'water.q10', 3)]
  expect(typicalOf(log, '2026-03-01', later, 'water.q10')).toBe(3)
  const undo = { kind: 'retraction', body: { of: 'entry', id: id(1) } } as const
  expect(typicalOf([...log, { ...own(3, '2026-06-03', '', 0), ...undo }], '2026-03-01')).toBeUndefined()
})

test('of two own values of one day the later received holds; one received out of order changes no later day', () => {
  const log = [own(1, '2026-03-01', 'foam.k.tank', 3), own(2, '2026-02-01', 'foam.k.tank', 2)]
  expect(typicalOf(log, '2026-03-01')).toBe(3)
  expect(typicalOf([...log, own(3, '2026-02-01', 'foam.k.tank', 5)], '2026-02-15')).toBe(5)
})
