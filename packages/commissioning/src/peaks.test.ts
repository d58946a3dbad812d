import { catalogueAlone } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { peakOf } from './peaks.ts'
import { asked, read } from './testing/new-tank.ts'

/** Two members, one of which comes to its height on day 30 and one on day 40. */
const courses = {
  days: [0, 20, 30, 40, 50],
  of: [
    [0, 4, 6, 3, 1],
    [0, 3, 4, 7, 2],
  ],
  weights: [0.5, 0.5],
}
const peak = (readings: Parameters<typeof asked>[1], events: Parameters<typeof asked>[2] = []) =>
  peakOf(asked(25, readings, events), catalogueAlone, 25, 'nitrite', courses)

test('a peak that readings saw pass is told by them', () => {
  const told = peak([read(10, 'nitrite', 2), read(15, 'nitrite', 5), read(25, 'nitrite', 1)])
  expect(told).toMatchObject({ by: 'readings', day: { middle: 15 }, height: { middle: 5 } })
  expect(told.height.low).toBeLessThan(5)
  expect(told.height.high).toBeGreaterThan(5)
})

test('a rising quantity has its peak where the model expects it, no lower than what was read', () => {
  const told = peak([read(15, 'nitrite', 2), read(25, 'nitrite', 6.8)])
  expect(told.by).toBe('model')
  expect(told.day.middle).toBeGreaterThanOrEqual(30)
  expect(told.height.middle).toBe(6.8)
})

test('a fall that a water change explains is no peak', () => {
  const readings = [read(15, 'nitrite', 5), read(25, 'nitrite', 2.6)]
  expect(peak(readings).by).toBe('readings')
  expect(peak(readings, [{ day: 20, kind: 'water change', volume_L: 100 }]).by).toBe('model')
})

test('what nobody read is told by the model alone', () => {
  expect(peak([])).toMatchObject({ by: 'model', height: { low: 6, middle: 6.5, high: 7 } })
})
