import { expect, test } from 'vitest'
import { foreignKernel } from './foreign.ts'
import { usualSettings } from './settings.ts'
import { FastestDecay } from './spectral-radius.ts'

test('an account that empties fast and moves no other is seen, though the kept direction knows nothing of it', () => {
  const kernel = foreignKernel({
    states: 2,
    from: Int32Array.of(0, 1),
    to: Int32Array.of(-1, -1),
    floored: Uint8Array.of(1, 1),
    tolerance: Float64Array.of(1e-3, 1e-3),
    rates: (y, out) => {
      out[0] = 5 * y[0]
      out[1] = 20 * y[1]
    },
  })
  const { memory } = kernel
  memory.set(memory.at.start, 0, Float64Array.of(3, 1))
  kernel.run.begin(0)
  const decay = new FastestDecay(kernel, usualSettings.tolerance, 1)
  memory.set(memory.at.direction, 0, Float64Array.of(1, 0))
  let fastest = 0
  decay.find([true, false], (_, found) => {
    fastest = found
  })
  expect(fastest).toBeGreaterThanOrEqual(20)
  expect(fastest).toBeLessThan(30)
})
