import { describe, expect, test } from 'vitest'
import { type Evaluate, morris } from './morris.ts'
import { sobol } from './sobol.ts'

/** Functions of the unit cube whose shares of variance are known in closed form. */
interface KnownFunction {
  readonly name: string
  readonly inputs: number
  readonly of: (point: readonly number[]) => number
  readonly first: readonly number[]
  readonly total: readonly number[]
}

const a = 7
const b = 0.1

/**
 * sin x1 + a sin² x2 + b x3⁴ sin x1 over -π to π (Ishigami & Homma 1990), with its shares as in Saltelli et al.
 * 2008, Global Sensitivity Analysis: The Primer (from memory; they follow from integrals over the cube).
 */
const ishigami: KnownFunction = (() => {
  const pi4 = Math.PI * Math.PI * Math.PI * Math.PI
  const byFirst = 0.5 * (1 + (b * pi4) / 5) * (1 + (b * pi4) / 5)
  const bySecond = (a * a) / 8
  const together = b * b * pi4 * pi4 * (1 / 18 - 1 / 50)
  const all = byFirst + bySecond + together
  return {
    name: 'Ishigami',
    inputs: 3,
    of: (point) => {
      const [x1, x2, x3] = point.map((u) => Math.PI * (2 * u - 1))
      return Math.sin(x1) + a * Math.sin(x2) * Math.sin(x2) + b * x3 * x3 * x3 * x3 * Math.sin(x1)
    },
    first: [byFirst / all, bySecond / all, 0],
    total: [(byFirst + together) / all, bySecond / all, together / all],
  }
})()

/** The product of (|4u - 2| + a) / (1 + a) (Sobol; Saltelli & Sobol 1995), its shares by their products. */
function gFunction(weights: readonly number[]): KnownFunction {
  const parts = weights.map((weight) => 1 / (3 * (1 + weight) * (1 + weight)))
  const product = (list: readonly number[]): number => list.reduce((all, part) => all * (1 + part), 1)
  const all = product(parts) - 1
  return {
    name: 'g-function',
    inputs: weights.length,
    of: (point) =>
      point.reduce((value, u, i) => (value * (Math.abs(4 * u - 2) + weights[i])) / (1 + weights[i]), 1),
    first: parts.map((part) => part / all),
    total: parts.map((part, i) => (part * product(parts.filter((_, other) => other !== i))) / all),
  }
}

const evaluates =
  (of: (point: readonly number[]) => number): Evaluate =>
  (points) =>
    points.map((point) => [of(point)])

const known = [ishigami, gFunction([0, 1, 4.5, 9, 99, 99])]

describe.each(known.map((one) => [one.name, one] as const))('of the variance of the %s', (_, one) => {
  const [shares] = sobol(evaluates(one.of), one.inputs, 20_000, 1)

  test('each input alone makes its share in closed form', () => {
    shares.forEach(({ first }, input) => {
      expect(Math.abs(first - one.first[input])).toBeLessThan(0.03)
    })
  })

  test('each input together with others makes its share in closed form', () => {
    shares.forEach(({ total }, input) => {
      expect(Math.abs(total - one.total[input])).toBeLessThan(0.03)
    })
  })
})

describe('a walk through the cube', () => {
  test('finds the slope of every input of a line, without a spread', () => {
    const slopes = [3, 0, -2, 0.5]
    const line = evaluates((point) => point.reduce((sum, u, i) => sum + slopes[i] * u, 0))
    const [effects] = morris(line, slopes.length, 10, 1)
    effects.forEach(({ mean, spread }, input) => {
      expect(mean).toBeCloseTo(Math.abs(slopes[input]) / 2, 12)
      expect(spread).toBeCloseTo(0, 12)
    })
  })

  test('puts the inputs of the g-function in the order of their weights', () => {
    const weights = [99, 0, 9, 1]
    const one = gFunction(weights)
    // The fold of |4u - 2| lies in the middle of every step of a half: away from it the effect is seen.
    const skewed = evaluates((point) => one.of(point.map((u) => u * u)))
    const [effects] = morris(skewed, weights.length, 200, 1)
    const order = weights.map((_, input) => input).sort((p, q) => effects[q].mean - effects[p].mean)
    expect(order).toEqual([1, 3, 2, 0])
  })

  test('sees that inputs work together by the spread of their effects', () => {
    const [effects] = morris(
      evaluates(([u, v, w]) => u * v + w),
      3,
      40,
      1,
    )
    expect(effects[0].spread).toBeGreaterThan(0.05)
    expect(effects[2].spread).toBeCloseTo(0, 12)
  })

  test('says nothing moves a result that is always the same', () => {
    const constant = evaluates(() => 4)
    expect(morris(constant, 2, 5, 1)[0].map(({ mean }) => mean)).toEqual([0, 0])
    expect(sobol(constant, 2, 5, 1)[0]).toEqual([
      { first: 0, total: 0 },
      { first: 0, total: 0 },
    ])
  })
})
