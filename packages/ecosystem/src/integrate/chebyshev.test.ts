import { describe, expect, test } from 'vitest'
import { coefficients } from './chebyshev.ts'

/** Change of y' = -speed * y from 1 in one step of 1, by the stages, and by the weights of their rates. */
function bothWays(stages: number, speed: number): readonly [number, number] {
  const { first, onLast, onBefore, onRate, onFirstRate, weights } = coefficients(stages)
  const rate = (change: number): number => -speed * (1 + change)
  let [before, last] = [0, first * rate(0)]
  let byWeights = weights[0] * rate(0)
  for (let j = 2; j <= stages; j++) {
    const now = onLast[j] * last + onBefore[j] * before + onRate[j] * rate(last) + onFirstRate[j] * rate(0)
    byWeights += weights[j - 1] * rate(last)
    before = last
    last = now
  }
  return [last, byWeights]
}

describe.each([2, 3, 7, 40, 250])('of %i stages', (stages) => {
  test('the weighted rates are the change that the stages end with', () => {
    for (const speed of [0.01, 0.5, 0.5 * stages * stages]) {
      const [byStages, byWeights] = bothWays(stages, speed)
      expect(byWeights).toBeCloseTo(byStages, 9)
    }
  })

  test('a constant rate flows for the whole step', () => {
    expect(coefficients(stages).weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 11)
  })
})
