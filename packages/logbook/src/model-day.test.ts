import { expect, test } from 'vitest'
import { dateOf, endOfDay, isDate, modelDay } from './model-day.ts'

const instant = (day: number): string => new Date(day * 86_400_000).toISOString()

test('noon is local noon on both sides of a change of clocks', () => {
  expect(instant(modelDay('2026-03-28', 12, 'Europe/Berlin'))).toBe('2026-03-28T11:00:00.000Z')
  expect(instant(modelDay('2026-03-29', 12, 'Europe/Berlin'))).toBe('2026-03-29T10:00:00.000Z')
  expect(instant(modelDay('2026-10-25', 12, 'Europe/Berlin'))).toBe('2026-10-25T11:00:00.000Z')
  expect(instant(modelDay('2026-01-01', 12, 'Pacific/Auckland'))).toBe('2025-12-31T23:00:00.000Z')
})

test('a day of a change of clocks has 23 or 25 hours', () => {
  const hours = (date: string): number =>
    Math.round(24 * (endOfDay(date, 'Europe/Berlin') - modelDay(date, 0, 'Europe/Berlin')))
  expect(['2026-03-28', '2026-03-29', '2026-10-25'].map(hours)).toEqual([24, 23, 25])
})

test('every day of a year gives its own date back, at any hour and in any zone', () => {
  for (const zone of ['America/Los_Angeles', 'Europe/Berlin', 'Australia/Lord_Howe', 'Asia/Kathmandu'])
    for (let day = 20454; day < 20819; day++) {
      const date = instant(day).slice(0, 10)
      for (const hour of [4, 12, 23]) expect(dateOf(modelDay(date, hour, zone), zone)).toBe(date)
    }
})

test('a date that the calendar lacks is none', () => {
  expect(['2026-02-28', '2028-02-29'].every(isDate)).toBe(true)
  expect(['2026-02-29', '2026-13-01', '1 March', ''].some(isDate)).toBe(false)
})
