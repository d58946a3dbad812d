import { past } from '@holdfast/inference'
import { expect, test, vi } from 'vitest'
import { commissioning } from './commissioning.ts'
import { startUpQuestion } from './start-up-question.ts'
import { asked, dose, newTank, read } from './testing/new-tank.ts'

vi.setConfig({ testTimeout: 120_000 })

const told = (question: ReturnType<typeof asked>) => commissioning(past(startUpQuestion(question)), question)

const threeWeeks = [
  read(0, 'ammonia', 2),
  read(7, 'ammonia', 1.8),
  read(14, 'ammonia', 1),
  read(21, 'ammonia', 0.2),
  read(7, 'nitrite', 0.5),
  read(14, 'nitrite', 3),
  read(21, 'nitrite', 5),
  read(21, 'nitrate', 2),
]
const live = newTank([
  { kind: 'quarried dry', mass_kg: 19.5, age_days: 0 },
  { kind: 'cured live', mass_kg: 0.5, age_days: 600 },
])

test('three weeks after a dose nitrite is on its height, and the first animals come weeks later', () => {
  const answer = told(asked(21, threeWeeks, [dose(0)], live))
  expect(answer.peaks.map(({ quantity }) => quantity)).toEqual(['ammonia', 'nitrite', 'nitrate'])
  const [ammonia, nitrite, nitrate] = answer.peaks
  expect([ammonia.by, nitrite.by, nitrate.by]).toEqual(['readings', 'model', 'model'])
  // All nitrogen of the dose as nitrite is 2 x 46.005 / 14.007 mg/L.
  expect(nitrite.height.middle).toBeLessThan((2 * 46.005) / 14.007)
  expect(answer.readyNow).toBe(false)
  // Keepers reckon with four to six weeks, and with some more where ammonia took three (common practice).
  expect(answer.ready.middle).toBeGreaterThan(24)
  expect(answer.ready.middle).toBeLessThan(70)
})

test('a tank that has shown all is ready since the day on which the last was shown', () => {
  const shown = [
    ...threeWeeks,
    ...[28, 36, 44, 47].flatMap((day) => [read(day, 'ammonia', 0), read(day, 'nitrite', day < 40 ? 1 : 0)]),
    read(47, 'nitrate', 12),
    read(47, 'phosphate', 0.04),
  ]
  const answer = told(asked(48, shown, [dose(0), dose(45)], live))
  expect(answer.conditions.filter(({ state }) => state === 'open' || state === 'not read')).toEqual([])
  expect(answer.readyNow).toBe(true)
  expect(answer.ready).toEqual({ low: 47, middle: 47, high: 47 })
})

test('rock with dead matter in it is not cured while it leaches, and is within months of changes and media', () => {
  const leaching = newTank([{ kind: 'dried ex-ocean', mass_kg: 25, age_days: 0, cured_days: 0 }])
  const readings = [
    read(10, 'ammonia', 3),
    read(30, 'ammonia', 0.2),
    read(20, 'nitrite', 4),
    read(30, 'nitrite', 1),
    read(30, 'nitrate', 15),
    read(10, 'phosphate', 0.7),
    read(30, 'phosphate', 1.2),
  ]
  const answer = told(asked(30, readings, [], leaching))
  expect(answer.conditions.find(({ name }) => name === 'rock_cured')?.state).toBe('open')
  expect(answer.readyNow).toBe(false)
  // Such rock cures for two to six months (common practice).
  expect(answer.ready.middle).toBeGreaterThan(56)
  expect(answer.ready.middle).toBeLessThan(240)
})
