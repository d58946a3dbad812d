import { expect, test } from 'vitest'

import { nitrate } from './conformance/nitrate.ts'
import type { Entry, Stored } from './entries/entry.ts'
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
    stored({ ...nitrate(4), kind: 'media', body: { action: 'placed', text: 'new media' } }),
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
    stored({ ...nitrate(1), kind: 'media', body: { action: 'replaced', mass_g: 200, text: '200 g' } }),
  ]
  const { events } = observationsAndEvents(log, 'UTC')
  expect(events.map(({ kind, day }) => [kind, hourOf(day)])).toEqual([
    ['media removed', 13],
    ['media placed', 13],
  ])
})
