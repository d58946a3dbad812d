import { expect, test } from 'vitest'
import { densityEos80 } from './density-eos80.ts'
import { densityTeos10 } from './density-teos10.ts'

// GSW-Python 3.6.16 rho_t_exact with SR_from_SP.
test.each([
  [35, 25, 0, 1023.3436],
  [35, 20, 0, 1024.766],
  [33, 28, 0, 1020.8927],
  [38, 24, 0, 1025.9158],
  [0, 25, 0, 997.0476],
  [35, 10, 1000, 1031.4328],
])('water of S %d at %d °C and %d dbar weighs %d g per litre', (s, t, p, grams) => {
  expect(Math.abs(1000 * densityTeos10(s, t, p) - grams)).toBeLessThanOrEqual(1e-4)
})

test('the old and the new equation lie within 0.006 g per litre wherever a reef tank can be', () => {
  for (let s = 0; s <= 42; s += 3)
    for (let t = 10; t <= 32; t += 2)
      expect(Math.abs(densityTeos10(s, t) - densityEos80(s, t))).toBeLessThan(6.5e-6)
})

test('water outside the equation is an error', () => {
  expect(() => densityTeos10(43, 25)).toThrow('salinity: 43 is outside 0 to 42.')
  expect(() => densityTeos10(35, 25, -1)).toThrow('pressure: -1')
})
