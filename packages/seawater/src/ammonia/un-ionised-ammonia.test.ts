import { expect, test } from 'vitest'
import { OutOfRange } from '../out-of-range.ts'
import { pH } from '../ph/ph.ts'
import { ammoniumPkKhoo1977 } from './ammonium-pk-khoo-1977.ts'
import { ammoniumPk, unIonisedAmmoniaFraction } from './un-ionised-ammonia.ts'

// Computed with PyCO2SYS 1.8.3.4 (Humphreys et al. 2022, Geosci. Model Dev. 15:15-43), total scale.
test.each([
  [35, 25, 8.0, 0.05372, 0.0003],
  [35, 25, 8.2, 0.08255, 0.0004],
  [35, 28, 8.1, 0.0829, 0.0004],
  [33, 20, 7.8, 0.0237, 0.0001],
  [35, 26, 8.4, 0.13365, 0.0007],
])('at S %d, %d °C and pH %d of the total scale the share of NH3 is %d', (s, t, value, share, tolerance) => {
  expect(Math.abs(unIonisedAmmoniaFraction(pH('total', value), s, t) - share)).toBeLessThanOrEqual(tolerance)
})

// 5.56 and 4.40 % per kg of water in the documentation of the R package wq (after Clegg & Whitfield 1995) are
// 5.37 and 4.24 % per kg of solution by the factor 1 - 0.001005 S: own arithmetic.
test('pH 8 at S 35, 25 °C is 5.37 % NH3 if it is of the total scale and 4.24 % if of the free', () => {
  expect(unIonisedAmmoniaFraction(pH('total', 8), 35, 25)).toBeCloseTo(0.0537, 4)
  expect(unIonisedAmmoniaFraction(pH('free', 8), 35, 25)).toBeCloseTo(0.0424, 4)
})

test('fresh water at 25 °C and pH 8 has 5.39 % NH3', () => {
  // pK 9.2446 in pure water: the first constant of the equation.
  expect(unIonisedAmmoniaFraction(pH('total', 8), 0, 25)).toBeCloseTo(0.0539, 4)
})

test('the same water has the same NH3 whichever scale its pH is written on', () => {
  // 0.1077 apart at S 35, 25 °C (PyCO2SYS 1.8.3.4).
  const shares = [pH('total', 8.1), pH('free', 8.2077)].map((one) => unIonisedAmmoniaFraction(one, 35, 25))
  expect(Math.abs(shares[0] - shares[1])).toBeLessThan(2e-5)
})

test('the published forms agree within 0.02 in pK once they are on one scale', () => {
  // Bell et al. 2008 and Khoo et al. 1977 are on the free scale by our inference; this is what it rests on.
  for (const t of [10, 20, 25]) {
    const bell = ammoniumPk('bell_2008', 'total', 35, t)
    expect(Math.abs(bell - ammoniumPk('clegg_whitfield_1995', 'total', 35, t))).toBeLessThan(0.02)
  }
})

test('salinity adds 0.107 to the pK of pure water, 9.352 at S 35 and 25 °C', () => {
  // Khoo et al. 1977, J. Solution Chem. 6:281, from the abstract; both parts rounded to 0.001.
  expect(Math.abs(ammoniumPkKhoo1977(35, 25) - 9.352)).toBeLessThanOrEqual(0.001)
})

test('a pH of the total scale put straight into a pK of the free scale would lose a fifth of the NH3', () => {
  const right = unIonisedAmmoniaFraction(pH('total', 8), 35, 25, 'bell_2008')
  const wrong = 1 / (1 + 10 ** (ammoniumPk('bell_2008', 'free', 35, 25) - 8))
  expect(wrong / right).toBeCloseTo(0.79, 2)
})

test('salinity, temperature or pH outside the fit is an error that says what is accepted', () => {
  const eight = pH('total', 8)
  expect(() => unIonisedAmmoniaFraction(eight, 41, 25)).toThrow('salinity: 41 is outside 0 to 40.')
  expect(() => unIonisedAmmoniaFraction(eight, 35, 41)).toThrow(OutOfRange)
  expect(() => unIonisedAmmoniaFraction(pH('total', Number.NaN), 35, 25)).toThrow(OutOfRange)
})
