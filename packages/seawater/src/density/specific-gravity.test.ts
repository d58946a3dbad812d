import { expect, test } from 'vitest'
import { salinityFromHydrometer, salinityFromSpecificGravity, specificGravity } from './specific-gravity.ts'

// EOS-80, computed apart: the four references that instruments carry. 60 °F is 15.5556 °C.
test.each([
  ['25/25 °C', 25, 25, 34.5],
  ['60/60 °F', 15.5556, 15.5556, 33.9],
  ['20/4 °C', 20, 4, 36.6],
  ['25/4 °C', 25, 4, 38.5],
])('specific gravity 1.026 at %s is another salinity', (_, sample, reference, salinity) => {
  expect(salinityFromSpecificGravity(1.026, sample, reference)).toBeCloseTo(salinity, 1)
})

test('specific gravity and salinity turn into each other under any two temperatures', () => {
  for (const [t, reference] of [
    [25, 25],
    [20, 4],
    [28.3, 15.6],
  ]) {
    const gravity = specificGravity(33.4, t, reference)
    expect(salinityFromSpecificGravity(gravity, t, reference)).toBeCloseTo(33.4, 9)
  }
})

test('a reading that no sea water has is an error that shows what would be one', () => {
  expect(() => salinityFromSpecificGravity(0.98, 25, 25)).toThrow(
    'specific gravity: 0.98 is outside 1 to 1.03',
  )
  expect(() => salinityFromSpecificGravity(1.2, 25, 25)).toThrow('two temperatures')
})

test('a glass float in water of its own temperature reads true, in warmer water it reads too low', () => {
  const trueReading = specificGravity(35, 25, 25)
  expect(salinityFromHydrometer(trueReading, 25, 25)).toBeCloseTo(35, 9)
  // Buoyancy balance, own arithmetic: 1.025 on a 60 °F float in water of 25 °C.
  expect(salinityFromHydrometer(1.025, 25, 15.6)).toBeCloseTo(35.53, 1)
  expect(salinityFromSpecificGravity(1.025, 15.6, 15.6)).toBeLessThan(33)
})
