import { expect, test } from 'vitest'

import { dateOrder } from './date-order.ts'
import { dateSlips } from './date-slips.ts'
import { parseDate, parseTime } from './parse-date.ts'

test.each([
  ['2026-03-07', { year: 2026, month: 3, day: 7 }],
  ['2026/3/7', { year: 2026, month: 3, day: 7 }],
  ['20260307', { year: 2026, month: 3, day: 7 }],
  ['07.03.2026', { year: 2026, month: 3, day: 7 }],
  ['7.3.', { month: 3, day: 7 }],
  ['3/7/26', { year: 2026, either: [3, 7] }],
  ['3-7', { either: [3, 7] }],
  ['7 March 2026', { year: 2026, month: 3, day: 7 }],
  ['7. März 2026', { year: 2026, month: 3, day: 7 }],
  ['1er février 2026', { year: 2026, month: 2, day: 1 }],
  ['3 de marzo de 2026', { year: 2026, month: 3, day: 3 }],
  ['7 mrt 2026', { year: 2026, month: 3, day: 7 }],
  ['Mar 7th, 2026', { year: 2026, month: 3, day: 7 }],
  ['07-Mar-26', { year: 2026, month: 3, day: 7 }],
  ['Mar 20', { month: 3, day: 20 }],
  ['Sat May 2, 2026', { year: 2026, month: 5, day: 2, weekday: 6 }],
  ['So 8.3.2026', { year: 2026, month: 3, day: 8, weekday: 7 }],
  ['3/7/2026 8:15 PM', { year: 2026, either: [3, 7], time: '20:15' }],
  ['2026-03-07T00:05:00Z', { year: 2026, month: 3, day: 7, time: '00:05' }],
])('%s is read as the date that it says', (text, said) => {
  expect(parseDate(text)).toEqual(said)
})

test.each(['changed 40 L', '5-10 ppm', 'May', '12', 'NO3', 'march of 3 snails 2026 5', ''])(
  '"%s" is no date',
  (text) => {
    expect(parseDate(text)).toBeUndefined()
  },
)

test('a time is by the clock, or the half of the day', () => {
  expect(
    ['8:05', '8.05', '8h05', '8:05 pm', '12:10 am', '8 PM'].map((text) => parseTime(text)?.time),
  ).toEqual(['08:05', '08:05', '08:05', '20:05', '00:10', '20:00'])
  expect(['am', 'abends', 'matin', 'tarde'].map((text) => parseTime(text)?.half)).toEqual([
    'am',
    'pm',
    'am',
    'pm',
  ])
  expect(parseTime('25:00')).toBeUndefined()
})

const orderOf = (...texts: readonly string[]): unknown =>
  dateOrder(texts.map((text) => parseDate(text) ?? {}))

test('the order of day and month comes from a day above 12, a day of the week, or rows that run on', () => {
  expect(orderOf('3/4/26', '13/4/26')).toBe('day first')
  expect(orderOf('3/4/26', '3/14/26')).toBe('month first')
  expect(orderOf('Fri 3/4/26', 'Mon 6/4/26')).toBe('day first')
  expect(orderOf('3/1/26', '10/1/26', '7/2/26', '4/3/26', '11/3/26')).toBe('day first')
  expect(orderOf('1/2/25', '2/3/25', '3/4/25', '4/5/25', '5/6/25')).toBeUndefined()
  expect(orderOf('5/5/26')).toBe('none')
  expect(orderOf('2026-03-04')).toBe('none')
})

test('a year of the far future and a month that was not turned are slips; an unordered column has none', () => {
  const weekly = ['2026-03-01', '2026-03-08', '2026-03-15', '2026-03-22', '2026-03-29', '2026-04-05']
  expect(dateSlips(weekly)).toEqual([])
  const slipped = [...weekly.slice(0, 3), '2062-03-22', ...weekly.slice(4), '2026-03-12', '2026-04-19']
  expect(dateSlips(slipped)).toMatchObject([
    { at: 3, likely: '2026-03-22' },
    { at: 6, likely: '2026-04-12' },
  ])
  expect(dateSlips(weekly.toReversed())).toEqual([])
  expect(dateSlips([...weekly.slice(3), ...weekly.slice(0, 3)])).toEqual([])
  expect(dateSlips([...weekly, '2062-04-12'])).toMatchObject([{ at: 6, likely: '2026-04-12' }])
})
