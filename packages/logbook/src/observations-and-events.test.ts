import { expect, test } from 'vitest'

import { nitrate } from './conformance/nitrate.ts'
import type { BodyOf, Entry, Stored } from './entries/entry.ts'
import { dateOf } from './model-day.ts'
import { observationsAndEvents } from './observations-and-events.ts'

const knownAt = '2026-04-01T00:00:00.000Z'
const stored = (entry: Entry): Stored => ({ ...entry, knownAt })
const reading = (number: number, at: string): Stored => {
  const precision = at.length > 10 ? 'minute' : 'day'
  return stored(nitrate(number, { at, precision }))
}
const change = (number: number, at: string): Stored => {
  const precision = at.length > 10 ? 'minute' : 'day'
  return stored({
    ...nitrate(number, { at, precision }),
    kind: 'water-change',
    body: { volume_L: 40, text: 'changed 40 L' },
  })
}
const hourOf = (day: number): number => Math.round((day % 1) * 24 * 60) / 60

test('a date alone is local noon, through the change to summer time as well', () => {
  const { observations } = observationsAndEvents(
    [reading(1, '2026-03-28'), reading(2, '2026-03-29')],
    'Europe/Berlin',
  )
  // Noon is 11:00 UTC in winter, 10:00 in summer; clocks changed in the night to 29 March 2026.
  expect(observations.map(({ day }) => hourOf(day))).toEqual([11, 10])
  expect(observations.map(({ day }) => Math.floor(day))).toEqual([20540, 20541])
})

test('the day is the same in every time zone of the machine, and differs by the zone of the system only', () => {
  const { observations } = observationsAndEvents([reading(1, '2026-01-04')], 'Pacific/Auckland')
  expect(observations[0].day).toBeCloseTo(20456 + 23 / 24, 9)
})

test('readings of a day come before its water changes', () => {
  const { observations, events } = observationsAndEvents(
    [change(1, '2026-01-04'), reading(2, '2026-01-04')],
    'UTC',
  )
  expect([hourOf(observations[0].day), hourOf(events[0].day)]).toEqual([12, 13])
})

test('a change without time follows a reading in the evening, a reading without time precedes a change in the morning', () => {
  const evening = observationsAndEvents(
    [reading(1, '2026-01-04T18:00+00:00[UTC]'), change(2, '2026-01-04')],
    'UTC',
  )
  expect(evening.events[0].day).toBeGreaterThan(evening.observations[0].day)
  const morning = observationsAndEvents(
    [reading(1, '2026-01-04'), change(2, '2026-01-04T09:00+00:00[UTC]')],
    'UTC',
  )
  expect(hourOf(morning.events[0].day)).toBe(9)
  expect(morning.observations[0].day).toBeLessThan(morning.events[0].day)
})

test('times that the keeper gave are kept, also a reading after the change', () => {
  const { observations, events } = observationsAndEvents(
    [reading(1, '2026-07-04T20:00+02:00[Europe/Berlin]'), change(2, '2026-07-04T10:00+02:00[Europe/Berlin]')],
    'Europe/Berlin',
  )
  expect([hourOf(observations[0].day), hourOf(events[0].day)]).toEqual([18, 8])
})

test('a limit of detection stays a limit', () => {
  const log = [
    stored(nitrate(1, { body: { quantity: 'phosphate', value: 0.03, belowDetection: true, text: '<0.03' } })),
  ]
  expect(observationsAndEvents(log, 'UTC').observations).toMatchObject([
    { quantity: 'phosphate', value: 0.03, belowDetection: true },
  ])
})

test('what the model cannot take is named with its reason, never dropped', () => {
  const body = { quantity: 'nitrate', belowDetection: false, text: '' } as const
  const log: Stored[] = [
    stored(nitrate(1, { body: { ...body, quantity: 'alkalinity', value: 3 } })),
    stored(nitrate(2, { body: { ...body, value: null, belowDetection: true } })),
    stored(nitrate(3, { body: { ...body, value: 50, aboveRange: true } })),
    stored({
      ...nitrate(4),
      kind: 'media',
      body: { action: 'placed', medium: 'phosphate media', text: 'new media' },
    }),
  ]
  const { observations, events, notUsed } = observationsAndEvents(log, 'UTC')
  expect([observations, events]).toEqual([[], []])
  expect(notUsed.map(({ why }) => why)).toEqual([
    'not observed by the model',
    'not detected and no limit stated',
    'above the range of the kit',
    'mass of the media not stated',
  ])
})

test('replaced media go out and come in at one instant', () => {
  const log = [
    stored({
      ...nitrate(1),
      kind: 'media',
      body: { action: 'replaced', medium: 'activated carbon', mass_g: 200, text: '200 g' },
    }),
  ]
  const { events } = observationsAndEvents(log, 'UTC')
  expect(events.map(({ kind, day }) => [kind, hourOf(day)])).toEqual([
    ['media removed', 13],
    ['media placed', 13],
  ])
  expect(events).toMatchObject([{ medium: 'carbon' }, { medium: 'carbon', mass_g: 200 }])
})

test('a day of 23 or of 25 hours keeps its readings before its changes, each on its own date', () => {
  for (const date of ['2026-03-29', '2026-10-25']) {
    const { observations, events } = observationsAndEvents(
      [change(1, date), reading(2, date)],
      'Europe/Berlin',
    )
    expect([observations[0].day, events[0].day].map((day) => dateOf(day, 'Europe/Berlin'))).toEqual([
      date,
      date,
    ])
    expect(24 * (events[0].day - observations[0].day)).toBeCloseTo(1, 6)
  }
})

test('of the hour that comes twice in autumn the first is an hour before the second', () => {
  const { observations } = observationsAndEvents(
    [
      reading(1, '2026-10-25T02:30+01:00[Europe/Berlin]'),
      reading(2, '2026-10-25T02:30+02:00[Europe/Berlin]'),
    ],
    'Europe/Berlin',
  )
  expect(observations.map(({ value }) => value)).toEqual([2, 1])
  expect(24 * (observations[1].day - observations[0].day)).toBeCloseTo(1, 6)
})

test('a reading at midnight is of the day that begins, and a change without time still follows it', () => {
  const { observations, events } = observationsAndEvents(
    [reading(1, '2026-01-04T00:00+01:00[Europe/Berlin]'), change(2, '2026-01-04')],
    'Europe/Berlin',
  )
  expect(dateOf(observations[0].day, 'Europe/Berlin')).toBe('2026-01-04')
  expect(hourOf(events[0].day)).toBe(12)
})

test('no order of a day pushes an entry into another day', () => {
  const early = observationsAndEvents(
    [reading(1, '2026-01-04'), change(2, '2026-01-04T00:00+00:00[UTC]')],
    'UTC',
  )
  const late = observationsAndEvents(
    [change(1, '2026-01-04'), reading(2, '2026-01-04T23:59+00:00[UTC]')],
    'UTC',
  )
  for (const { observations, events } of [early, late]) {
    expect([...observations, ...events].map(({ day }) => dateOf(day, 'UTC'))).toEqual([
      '2026-01-04',
      '2026-01-04',
    ])
    expect(events[0].day).toBeGreaterThanOrEqual(observations[0].day)
  }
})

test('after a move to another zone a date is noon there', () => {
  const zone = (date: string): string => (date < '2026-01-10' ? 'Europe/Berlin' : 'America/Chicago')
  const { observations } = observationsAndEvents([reading(1, '2026-01-09'), reading(2, '2026-01-10')], zone)
  // Noon is 11:00 UTC in Berlin and 18:00 UTC in Chicago.
  expect(observations.map(({ day }) => hourOf(day))).toEqual([11, 18])
})

const nitriteOn = (number: number, at: string, value: number, belowDetection = false): Stored => {
  const body = { quantity: 'nitrite', value, belowDetection, text: String(value) } as const
  return { ...reading(number, at), kind: 'reading', body }
}

test('nitrate is an upper bound while there is nitrite, of the same date or of the last reading before', () => {
  const log = [
    reading(20, '2026-01-01'),
    nitriteOn(1, '2026-01-02', 1),
    reading(40, '2026-01-02'),
    reading(30, '2026-01-09'),
    nitriteOn(2, '2026-01-10', 0.05, true),
    reading(10, '2026-01-10'),
    reading(11, '2026-01-12'),
  ]
  const { observations, upperBounds } = observationsAndEvents(log, 'UTC')
  const nitrates = observations.filter(({ quantity }) => quantity === 'nitrate')
  expect(nitrates.map(({ value, belowDetection }) => [value, belowDetection])).toEqual([
    [20, false],
    [40, true],
    [30, true],
    [10, false],
    [11, false],
  ])
  expect(upperBounds).toEqual([nitrate(40).id, nitrate(30).id])
})

test('a little nitrite raises nothing, and nitrite of a month ago no longer speaks', () => {
  const log = [
    nitriteOn(1, '2026-01-02', 0.1),
    reading(40, '2026-01-02'),
    nitriteOn(2, '2026-02-01', 2),
    reading(30, '2026-03-01'),
  ]
  expect(observationsAndEvents(log, 'UTC').upperBounds).toEqual([])
})

test('a harvest, new rock, a move, another light and a siphoned floor are events', () => {
  const log = [
    stored({ ...nitrate(1), kind: 'harvest', body: { from: 'refugium', wet_g: 250, text: '' } }),
    stored({
      ...nitrate(2),
      kind: 'rock-added',
      body: { rock: { kind: 'quarried dry', mass_kg: 5, age_days: 0 }, text: '' },
    }),
    stored({
      ...nitrate(3),
      kind: 'animals-moved',
      body: { taxon: 'a snail', count: 2, to: 'sump', text: '' },
    }),
    stored({ ...nitrate(4), kind: 'light-change', body: { light_h_per_day: 0, text: '' } }),
    stored({ ...nitrate(5), kind: 'siphoning', body: { part: 0.3, text: '' } }),
  ]
  const { events, notUsed } = observationsAndEvents(log, 'UTC')
  expect(events.map(({ kind }) => kind)).toEqual([
    'harvest',
    'rock added',
    'animals moved',
    'light change',
    'siphoning',
  ])
  expect(events.at(-1)).toMatchObject({ part: 0.3 })
  expect(notUsed).toEqual([])
})

test('animals that were taken out take their bodies with them; of those missing nobody knows', () => {
  const animals = (number: number, body: Partial<BodyOf<'animals'>>): Stored =>
    stored({
      ...nitrate(number),
      v: 2,
      kind: 'animals',
      body: { change: 'died', taxon: 'a snail', count: 2, text: '', ...body },
    })
  const log = [
    animals(1, { change: 'taken out' }),
    animals(2, { bodyTakenOut: false }),
    animals(3, { change: 'missing' }),
  ]
  const lost = { kind: 'animals lost', taxon: 'a snail', count: 2 }
  expect(observationsAndEvents(log, 'UTC').events.map(({ day: _, entry: __, ...event }) => event)).toEqual([
    { ...lost, bodyTakenOut: true },
    { ...lost, bodyTakenOut: false },
    lost,
  ])
})
