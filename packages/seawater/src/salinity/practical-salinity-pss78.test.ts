import { expect, test } from 'vitest'
import {
  conductivityPss78,
  practicalSalinityOfRatioPss78,
  practicalSalinityPss78,
} from './practical-salinity-pss78.ts'
import { its90 } from './temperature-scale.ts'

// Fofonoff & Millard 1983, UNESCO Tech. Pap. Mar. Sci. 44.
test.each([
  [1, 15, 0, 35],
  [1.2, 20, 2000, 37.245628],
  [0.65, 5, 1500, 27.995347],
])('a ratio of %d at %d °C (IPTS-68) and %d dbar is salinity %d', (ratio, t68, p, salinity) => {
  expect(practicalSalinityOfRatioPss78(ratio, its90(t68), p)).toBeCloseTo(salinity, 5)
})

test('salinity to conductivity and back loses nothing', () => {
  for (const salinity of [2, 20, 33, 35, 42]) {
    for (const temperature of [-2, 15, 25, 35]) {
      const there = conductivityPss78(salinity, temperature)
      expect(practicalSalinityPss78(there, temperature)).toBeCloseTo(salinity, 10)
    }
  }
})

test('the 53 mS/cm that keepers aim at is S 35 at 25 °C', () => {
  // GSW-Python 3.6.16 C_from_SP.
  expect(conductivityPss78(35, 25)).toBeCloseTo(53.071, 2)
})

test('conductivity in µS/cm, or of nearly fresh water, is refused and the error says what to check', () => {
  expect(() => practicalSalinityPss78(53000, 25)).toThrow('not µS/cm')
  expect(() => practicalSalinityPss78(1, 25)).toThrow('2 to 42')
  expect(() => practicalSalinityPss78(53, 36)).toThrow('temperature: 36 is outside -2 to 35.')
})
