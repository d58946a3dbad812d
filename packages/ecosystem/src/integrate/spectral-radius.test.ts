import { expect, test } from 'vitest'
import type { Equations } from './equations.ts'
import { radiusWork, spectralRadius } from './spectral-radius.ts'

test('an account that empties fast and moves no other is seen, though the kept direction knows nothing of it', () => {
  const equations: Equations = {
    states: 2,
    fluxes: 2,
    from: Int32Array.of(0, 1),
    to: Int32Array.of(-1, -1),
    floored: Uint8Array.of(1, 1),
    tolerance: Float64Array.of(1e-3, 1e-3),
    rates: (y, out) => {
      out[0] = 5 * y[0]
      out[1] = 20 * y[1]
    },
  }
  const y = Float64Array.of(3, 1)
  const rates = new Float64Array(2)
  equations.rates(y, rates)
  const work = radiusWork(equations)
  work.direction[1] = 0
  const radius = spectralRadius(
    equations,
    y,
    rates,
    Float64Array.from(rates, (rate) => -rate),
    Float64Array.of(1e-3, 1e-3),
    work,
  )
  expect(radius).toBeGreaterThanOrEqual(20)
  expect(radius).toBeLessThan(30)
})
