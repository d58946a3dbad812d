import { expect, test } from 'vitest'
import { densityEos80 } from './density-eos80.ts'

// UNESCO 1981 (Millero & Poisson 1981) and UNESCO 1983 p. 22, on the temperature scale of 1968.
test.each([
  [0, 5, 999.96675],
  [0, 25, 997.04796],
  [35, 5, 1027.67547],
  [35, 25, 1023.34306],
  [0, 30, 995.65113],
  [35, 0, 1028.10633],
])('sea water of S %d at %d °C (IPTS-68) weighs %d g per litre', (s, t68, grams) => {
  expect(Math.abs(1000 * densityEos80(s, t68 / 1.00024) - grams)).toBeLessThanOrEqual(2e-5)
})

test('water saltier than the equation covers is an error', () => {
  expect(() => densityEos80(43, 25)).toThrow('salinity: 43 is outside 0 to 42.')
})
