import { expect, test } from 'vitest'
import type { BodyOf, Entry, Stored } from './entries/entry.ts'
import { dateOf } from './model-day.ts'
import { readSystemFile } from './system-file/read-system-file.ts'
import { systemLog } from './system-log.ts'
import { hall } from './testing/hall.ts'

const said = {
  workspace: 'home',
  system: 'hall',
  v: 1,
  precision: 'day',
  by: 'keeper',
  device: 'desk',
} as const

let count = 0
function stored(at: string, what: Pick<Entry, 'kind' | 'body'>, more: Partial<Entry> = {}): Stored {
  count++
  const id = `018f3a1e-7c00-7000-8000-${String(count).padStart(12, '0')}`
  const knownAt = `2026-06-01T08:00:${String(count).padStart(2, '0')}.000Z`
  return { ...said, id, at, madeAt: knownAt, knownAt, ...what, ...more } as Stored
}

function described(at: string, name: string): Stored {
  const read = readSystemFile(JSON.stringify({ ...hall, name }))
  if (!read.ok) throw new Error('the reef in the hall does not read')
  return stored(at, { kind: 'system', body: { tells: 'change', document: {}, system: read.system } })
}

const nitrate = (at: string, body: Partial<BodyOf<'reading'>> = {}, more: Partial<Entry> = {}): Stored =>
  stored(
    at,
    { kind: 'reading', body: { quantity: 'nitrate', value: 5, belowDetection: false, text: '5', ...body } },
    more,
  )

const note = (at: string): Stored => stored(at, { kind: 'note', body: { text: 'all well' } })

test('a log without a description is no system', () => {
  expect(systemLog([])).toBeUndefined()
  expect(systemLog([nitrate('2026-02-01')])).toBeUndefined()
})

test('the day on which one looks is the last one with an entry, notes among them', () => {
  const log = systemLog([described('2026-01-01', 'Hall'), nitrate('2026-02-01'), note('2026-02-09')])
  expect(log?.dates).toEqual({ from: '2026-02-01', to: '2026-02-09' })
  expect(log?.remarks).toEqual([])
})

test('all of the first and the last day is in the span, from its first timed reading to its last', () => {
  const timed = { precision: 'minute' } as const
  const log = systemLog([
    described('2026-01-01', 'Hall'),
    nitrate('2026-02-01T00:05+01:00[Europe/Berlin]', {}, timed),
    nitrate('2026-03-29T23:59+02:00[Europe/Berlin]', {}, timed),
  ])
  const days = log?.observations.map(({ day }) => day) ?? []
  expect(days).toHaveLength(2)
  expect(log?.from).toBe(days[0])
  expect(log?.asOf).toBeGreaterThan(days[1])
  expect(dateOf(log?.asOf ?? 0, 'Europe/Berlin')).toBe('2026-03-29')
})

test('of two descriptions the one that holds on the last day counts', () => {
  const [small, large] = [described('2026-01-01', 'Small'), described('2026-03-01', 'Large')]
  expect(systemLog([small, large, note('2026-02-01')])?.system.name).toBe('Small')
  expect(systemLog([small, large, note('2026-04-01')])?.system.name).toBe('Large')
})

test('a description that comes after the log is taken for the days before it, and the log says so', () => {
  const log = systemLog([nitrate('2026-02-01'), described('2026-05-01', 'Hall')])
  expect(log?.system.name).toBe('Hall')
  expect(log?.dates).toEqual({ from: '2026-02-01', to: '2026-02-01' })
  expect(log?.remarks).toEqual([
    'The system is described from 2026-05-01 on; the days from 2026-02-01 are read with that description.',
  ])
})

test('a system with a description alone is looked at on the day of it', () => {
  const log = systemLog([described('2026-01-01', 'Hall')])
  expect(log?.dates).toEqual({ from: '2026-01-01', to: '2026-01-01' })
})

test('readings that the model cannot take are counted with their reason; other quantities are none', () => {
  const log = systemLog([
    described('2026-01-01', 'Hall'),
    nitrate('2026-02-01', { value: null, belowDetection: true, text: 'n.d.' }),
    nitrate('2026-02-08', { value: null, belowDetection: true, text: 'n.d.' }),
    nitrate('2026-02-08', { quantity: 'calcium', value: 420, text: '420' }),
  ])
  expect(log?.remarks).toEqual(['2 entries were not used: not detected and no limit stated.'])
})

const changed = (equipment: string, changes: Record<string, unknown>): Stored =>
  stored('2026-02-01', { kind: 'equipment-change', body: { equipment, changes, text: '' } })

test('a change of equipment that moves nothing in the model is named with its reason', () => {
  const log = systemLog([
    described('2026-01-01', 'Hall'),
    changed('skimmer', { running: false }),
    changed('skimmer', { neck_mm: 40 }),
    changed('skimmer', { running: 'off' }),
    changed('heater', { running: false }),
  ])
  expect(log?.remarks).toEqual([
    '1 change of equipment moves nothing, since the system is described without it: heater.',
    '2 changes of equipment move nothing, since the model has no answer: skimmer (neck_mm), skimmer (on or off).',
  ])
})

test('feed that the description does not have is not used, and the log says so', () => {
  const fed = (at: string, feed: string) =>
    stored(at, { kind: 'feeding', body: { g_per_day: 2, feed, text: '2 g/d' } })
  const log = systemLog([
    described('2026-01-01', 'Hall'),
    fed('2026-02-01', 'dry pellet'),
    fed('2026-02-02', 'mysids'),
    fed('2026-02-03', 'mysids'),
  ])
  expect(log?.remarks).toEqual([
    '2 feedings were not used: the feed "mysids" is not in the description of the system, which has dry pellet.',
  ])
})

test('an own value of a fact goes with the log, though it was told after the last reading', () => {
  const numbers = { low: 1, typical: 2, high: 3, unit: 'd⁻¹', reason: 'measured' }
  const own = stored('2026-03-01', { kind: 'fact-override', body: { fact: 'foam.k.tank', ...numbers } })
  const log = systemLog([described('2026-01-01', 'Hall'), nitrate('2026-02-01'), own])
  expect(log?.dates.to).toBe('2026-02-01')
  expect(log?.ownFacts).toEqual([{ fact: 'foam.k.tank', ...numbers }])
})
