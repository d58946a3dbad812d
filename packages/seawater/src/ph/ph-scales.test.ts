import { expect, test } from 'vitest'
import { pH } from './ph.ts'
import { onScale } from './ph-scales.ts'

// PyCO2SYS 1.8.3.4: free = total + 0.108, seawater = total - 0.010, NBS = total + 0.137 at S 35, 25 °C.
test.each([
  ['free', 8.2077, 0.002],
  ['seawater', 8.09, 0.001],
  ['NBS', 8.237, 0.001],
] as const)('pH 8.1 of the total scale reads otherwise on the %s scale', (scale, reads, tolerance) => {
  expect(Math.abs(onScale(pH('total', 8.1), scale, 35, 25).value - reads)).toBeLessThanOrEqual(tolerance)
})

test('a pH taken round all scales comes back as it was', () => {
  const free = onScale(pH('total', 8.1), 'free', 33, 27)
  const nbs = onScale(onScale(free, 'seawater', 33, 27), 'NBS', 33, 27)
  const back = onScale(nbs, 'total', 33, 27)
  expect(back.value).toBeCloseTo(8.1, 12)
  expect(back.scale).toBe('total')
})

test('in fresh water there is no sulfate, and total and free are the same', () => {
  expect(onScale(pH('total', 7), 'free', 0, 20).value).toBe(7)
})
