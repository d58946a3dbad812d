import { expect, test } from 'vitest'

import { modelDayOfTime } from './model-day.ts'
import { momentAt, readMoment } from './moment.ts'

const berlin = 'Europe/Berlin'
const at = (text: string, zone = berlin): string | undefined => {
  const read = readMoment(text, zone)
  return read.ok ? read.at : undefined
}
const hoursBetween = (a: string, b: string): number =>
  Math.round(1440 * (modelDayOfTime(b) - modelDayOfTime(a))) / 60

test('a date without a time stays a date: no hour is made up', () => {
  expect(readMoment('2026-03-01', berlin)).toEqual({ ok: true, at: '2026-03-01', precision: 'day' })
})

test('a time is kept with the offset and the zone of that day', () => {
  expect(at('2026-03-01T08:10')).toBe('2026-03-01T08:10+01:00[Europe/Berlin]')
  expect(at('2026-07-01 8:10')).toBe('2026-07-01T08:10+02:00[Europe/Berlin]')
})

test('midnight belongs to the day that it begins', () => {
  expect(at('2026-03-01T00:00')).toBe('2026-03-01T00:00+01:00[Europe/Berlin]')
  expect(readMoment('2026-03-01T24:00', berlin)).toMatchObject({ ok: false, issues: [{ code: 'no-time' }] })
})

test('an hour that the clocks leave out in spring is refused, not moved in silence', () => {
  expect(readMoment('2026-03-29T02:30', berlin)).toMatchObject({
    ok: false,
    issues: [{ code: 'left-out-hour', got: expect.stringContaining('no 02:30 on 2026-03-29') }],
  })
  expect(hoursBetween(at('2026-03-29T01:30') ?? '', at('2026-03-29T03:30') ?? '')).toBe(1)
})

test('an hour that comes twice in autumn is asked about, and its offset answers', () => {
  const read = readMoment('2026-10-25T02:30', berlin)
  if (read.ok || !('question' in read)) throw new Error('it was not asked')
  const [first, second] = read.question.options.map(({ value }) => at(value) ?? '')
  expect(first).toBe('2026-10-25T02:30+02:00[Europe/Berlin]')
  expect(hoursBetween(first, second)).toBe(1)
})

test('from noon to noon there are 23 hours in spring and 25 in autumn', () => {
  expect(hoursBetween(at('2026-03-28T12:00') ?? '', at('2026-03-29T12:00') ?? '')).toBe(23)
  expect(hoursBetween(at('2026-10-24T12:00') ?? '', at('2026-10-25T12:00') ?? '')).toBe(25)
})

test('an offset that the zone does not have that day is refused', () => {
  expect(readMoment('2026-07-01T08:10+01:00', berlin)).toMatchObject({
    ok: false,
    issues: [{ code: 'wrong-offset' }],
  })
})

test.each(['', 'yesterday', '3/4/26', '2026-02-30', '2026-2-3', '2026-03-01T8', '2026-03-01T08:61'])(
  '"%s" is not guessed at',
  (text) => {
    expect(readMoment(text, berlin)).toMatchObject({ ok: false, issues: [{ where: 'Time' }] })
  },
)

test('an instant is told by the clock beside the tank, and its two hours of an autumn night apart', () => {
  const at = (instant: string, zone: string): string => momentAt(new Date(instant), zone).at
  expect(at('2026-03-01T22:30:40Z', berlin)).toBe('2026-03-01T23:30+01:00[Europe/Berlin]')
  expect(at('2026-03-01T22:30:40Z', 'Asia/Tokyo')).toBe('2026-03-02T07:30+09:00[Asia/Tokyo]')
  expect(at('2026-10-25T00:30:00Z', berlin)).toBe('2026-10-25T02:30+02:00[Europe/Berlin]')
  expect(at('2026-10-25T01:30:00Z', berlin)).toBe('2026-10-25T02:30+01:00[Europe/Berlin]')
})
