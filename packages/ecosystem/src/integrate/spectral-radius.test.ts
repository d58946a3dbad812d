import { expect, test } from 'vitest'
import { foreignKernel } from './foreign.ts'
import { Lane } from './lane.ts'
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
  const lanes = [new Lane(usualSettings), new Lane(usualSettings)] as const
  lanes[0].begin(0)
  lanes[0].plan(1)
  lanes[1].plan(1)
  const decay = new FastestDecay(kernel, usualSettings.tolerance, 1)
  memory.set(memory.at.direction, 0, Float64Array.of(1, 0))
  decay.find(lanes)
  expect(lanes[0].fastest).toBeGreaterThanOrEqual(20)
  expect(lanes[0].fastest).toBeLessThan(30)
})
