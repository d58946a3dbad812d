import { readFileSync } from 'node:fs'
import {
  entriesFromSheet,
  observationsAndEvents,
  readEntry,
  readSheet,
  readSystemFile,
  type Stored,
} from '@holdfast/logbook'
import { expect, test } from 'vitest'

const fileOf = (name: string): string => readFileSync(new URL(`./reef-600/${name}`, import.meta.url), 'utf8')

const entries = (JSON.parse(fileOf('log.json')) as unknown[]).map((value): Stored => {
  const read = readEntry(value)
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  return { ...read.entry, knownAt: read.entry.madeAt }
})
const countOf = (kind: string): number => entries.filter((entry) => entry.kind === kind).length

test('the system file is read without an issue, and the log holds the same system', () => {
  const read = readSystemFile(fileOf('system.json'))
  if (!read.ok) throw new Error(JSON.stringify(read.issues))
  const described = entries.find((entry) => entry.kind === 'system')
  expect(described?.body.system).toEqual(read.system)
  expect(read.system.vessels.reduce((sum, { volume_L }) => sum + volume_L, 0)).toBeCloseTo(600, 9)
})

test('the log tells a year: its tests, its changes and all that was done', () => {
  // 53 days of tests less two Sundays away, one typed twice; five of them without phosphate.
  const [nitrate, phosphate] = ['nitrate', 'phosphate'].map(
    (quantity) =>
      entries.filter((entry) => entry.kind === 'reading' && entry.body.quantity === quantity).length,
  )
  expect([nitrate, phosphate]).toEqual([52, 47])
  expect(countOf('water-change')).toBe(26)
  expect(countOf('media')).toBe(3)
  expect(countOf('hand-removal')).toBe(2)
  expect(countOf('animals')).toBe(7)
  expect(countOf('survey')).toBe(22)
  expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length)
})

test('all of the log but its words reaches the model', () => {
  const { observations, events, notUsed } = observationsAndEvents(entries, 'Europe/Berlin')
  expect(notUsed).toEqual([])
  expect(observations).toHaveLength(52 + 47 + 22)
  // Media taken out are one event; media replaced are two, the old out and the new in.
  expect(events).toHaveLength(26 + 1 + 2 * 2 + 2 + countOf('animals') + countOf('feeding'))
})

test('the spreadsheet has nothing that waits for an answer, and holds what a careful reader doubts', () => {
  const sheet = readSheet(new TextEncoder().encode(fileOf('tests.csv')), 'tests.csv')
  expect(sheet.questions.filter(({ waiting }) => waiting > 0)).toEqual([])
  expect(sheet.issues).toEqual([])
  const phosphate = sheet.readings.filter(({ quantity }) => quantity === 'phosphate')
  expect(phosphate.some(({ belowDetection, value }) => belowDetection && value === 0.03)).toBe(true)
  const slip = phosphate.find(({ date }) => date === '2026-02-15')
  const before = phosphate.find(({ date }) => date === '2026-02-08')
  expect(slip?.value ?? 0).toBeGreaterThan(4 * (before?.value ?? 1))
  expect(slip?.suspect).toBe(true)
  expect(slip?.likely).toBeCloseTo((slip?.value ?? 0) / 10)
  const typed = phosphate.filter(({ date }) => date === '2026-09-13').map(({ text }) => text)
  expect(typed).toHaveLength(2)
  expect(new Set(typed).size).toBe(1)
  expect(sheet.odd.filter(({ why }) => why.startsWith('the row repeats'))).toHaveLength(3)
})

test('the year is one that a keeper could have had', () => {
  const values = (quantity: string): readonly number[] =>
    entries.flatMap(({ kind, at, body }) =>
      kind === 'reading' && body.quantity === quantity && at !== '2026-02-15' ? [body.value ?? 0] : [],
    )
  expect(Math.max(...values('nitrate'))).toBeLessThan(25)
  expect(Math.min(...values('nitrate'))).toBeGreaterThanOrEqual(2)
  expect(Math.max(...values('phosphate'))).toBeLessThan(0.6)
  const onRock = entries.flatMap(({ kind, at, body }) =>
    kind === 'survey' && body.surface === 'rock face' ? [{ at, cover: body.cover }] : [],
  )
  const worst = onRock.reduce((most, one) => (one.cover > most.cover ? one : most))
  // The algae come after the holiday of overfeeding and are held down at the end.
  expect(worst.at > '2026-05-16' && worst.at < '2026-08-01').toBe(true)
  expect(worst.cover).toBeGreaterThan(4 * (onRock[0]?.cover ?? 1))
  expect(onRock.at(-1)?.cover ?? 1).toBeLessThan(0.7 * worst.cover)
})

test('importing the spreadsheet into the log adds nothing, for its readings are there', () => {
  const sheet = readSheet(new TextEncoder().encode(fileOf('tests.csv')), 'another name.csv')
  const into = {
    workspace: 'home',
    system: 'reef-600',
    timeZone: 'Europe/Berlin',
    by: 'keeper',
    device: 'desk',
    madeAt: '2026-11-09T08:00:00Z',
    batch: 'second',
  }
  const again = entriesFromSheet(sheet, into, entries)
  expect(again.entries).toEqual([])
  expect(again.already).toHaveLength(52 + 47 + sheet.notes.length)
  expect(entriesFromSheet(sheet, into, []).entries).toHaveLength(again.already.length)
})
