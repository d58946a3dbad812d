import { expect, test } from 'vitest'
import {
  ammoniumPkCleggWhitfield1995,
  unIonisedAmmoniaFraction,
  unIonisedAmmoniaFractionFreeScale,
} from './ammonia.ts'
import { OutOfRange } from './out-of-range.ts'

// Computed with PyCO2SYS 1.8.3.4 (Humphreys et al. 2022, Geosci. Model Dev. 15:15-43), total scale.
test.each([
  [35, 25, 8.0, 0.05372, 0.0003],
  [35, 25, 8.2, 0.08255, 0.0004],
  [35, 28, 8.1, 0.0829, 0.0004],
  [33, 20, 7.8, 0.0237, 0.0001],
  [35, 26, 8.4, 0.13365, 0.0007],
])('at S %d, %d °C and pH %d of the total scale the share of NH3 is %d', (s, t, pH, share, tolerance) => {
  expect(Math.abs(unIonisedAmmoniaFraction(pH, s, t) - share)).toBeLessThanOrEqual(tolerance)
})

// Computed with PyCO2SYS 1.8.3.4, as above.
test.each([
  [35, 25, 9.2458],
  [35, 20, 9.4188],
  [30, 28, 9.136],
])('at S %d and %d °C the pK of ammonium is %d', (s, t, pK) => {
  expect(Math.abs(ammoniumPkCleggWhitfield1995(s, t) - pK)).toBeLessThanOrEqual(0.001)
})

// 4.40 % per kg of water in the documentation of the R package wq (after Clegg & Whitfield 1995) is 4.24 %
// per kg of solution by the factor 1 - 0.001005 S: own arithmetic.
test('the same pH read on the free scale means less NH3: 4.24 % at S 35, 25 °C, pH 8', () => {
  expect(unIonisedAmmoniaFractionFreeScale(8, 35, 25)).toBeCloseTo(0.0424, 4)
})

test('fresh water at 25 °C and pH 8 has 5.39 % NH3', () => {
  // pK 9.2446 in pure water: the first constant of the equation.
  expect(unIonisedAmmoniaFraction(8, 0, 25)).toBeCloseTo(0.0539, 4)
})

test('salinity, temperature or pH outside the fit is an error that says what is accepted', () => {
  expect(() => unIonisedAmmoniaFraction(8, 41, 25)).toThrow('salinity: 41 is outside 0 to 40.')
  expect(() => unIonisedAmmoniaFraction(8, 35, 41)).toThrow(OutOfRange)
  expect(() => unIonisedAmmoniaFraction(Number.NaN, 35, 25)).toThrow(OutOfRange)
})
