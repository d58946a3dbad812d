import { expect, test } from 'vitest'
import { weightedQuantiles } from './quantiles.ts'
import { weigh, weightsOfFirst } from './weights.ts'

test('members that explain the readings alike weigh alike', () => {
  const weights = weigh([-3, -3, -3, -3])
  expect(weights.of).toEqual([0.25, 0.25, 0.25, 0.25])
  expect(weights.effective).toBeCloseTo(4)
  expect(weights.tempering).toBe(1)
})

test('where one member explains everything, the readings count for less until a fifth of them counts', () => {
  const logs = Array.from({ length: 40 }, (_, member) => -10 * member)
  const weights = weigh(logs)
  expect(weights.tempering).toBeLessThan(1)
  expect(weights.effective).toBeGreaterThanOrEqual(8)
  expect(weights.of[0]).toBeGreaterThan(weights.of[1])
})

test('quantiles of equal weights are those of the list', () => {
  const values = Array.from({ length: 101 }, (_, i) => i)
  const weights = values.map(() => 1 / values.length)
  const [low, middle, high] = weightedQuantiles(values, weights, [0.05, 0.5, 0.95])
  expect(middle).toBeCloseTo(50)
  expect(low).toBeCloseTo(4.55)
  expect(high).toBeCloseTo(95.45)
})

test('a member with all the weight is every quantile', () => {
  expect(weightedQuantiles([3, 1, 2], [0, 1, 0], [0.05, 0.5, 0.95])).toEqual([1, 1, 1])
})

test('the first members share all the weight among themselves, and alike where none of them counts', () => {
  const weights = weigh([0, 0, -1e9, 0])
  expect(weightsOfFirst(weights, 2)).toMatchObject({ of: [0.5, 0.5], effective: 2 })
  expect(weightsOfFirst({ of: [0, 0, 1], effective: 1, tempering: 0.5 }, 2)).toMatchObject({
    of: [0.5, 0.5],
    tempering: 0.5,
  })
})
