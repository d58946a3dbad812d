import * as elementary from '@holdfast/elementary'
import { beforeAll, describe, expect, test } from 'vitest'
import { compileKernel } from '../../build/compile.ts'
import { chance } from '../testing/chance.ts'

interface Compiled {
  readonly exp: (x: number) => number
  readonly tanh: (x: number) => number
  readonly pow: (x: number, y: number) => number
}
let compiled: Compiled

beforeAll(async () => {
  const binary = await compileKernel('elementary-test.ts', '')
  const { exports } = new WebAssembly.Instance(new WebAssembly.Module(Uint8Array.from(binary)))
  // The exports of a module have no types of their own.
  compiled = exports as unknown as Compiled
}, 60_000)

const draw = chance(8)
const spread = (reach: number): readonly number[] =>
  Array.from({ length: 20_000 }, () => (2 * draw() - 1) * reach)
const near = (...points: readonly number[]): readonly number[] =>
  points.flatMap((x) => [x, -x, x * (1 + 2 ** -52), x * (1 - 2 ** -53), -x * (1 + 2 ** -52)])
const edges = near(
  0,
  1e-300,
  2e-17,
  1e-8,
  0.34657359027997264,
  1,
  22,
  38.8,
  700,
  709.782712893384,
  745.2,
  1e308,
)
const beyond = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]

describe('the functions of the kernel have the bits of the functions of the project', () => {
  test('exp', () => {
    const points = [...edges, ...beyond, ...spread(1), ...spread(40), ...spread(760)]
    expect(points.filter((x) => !Object.is(compiled.exp(x), elementary.exp(x)))).toEqual([])
  })

  test('tanh', () => {
    const points = [...edges, ...beyond, ...spread(1e-3), ...spread(2), ...spread(30)]
    expect(points.filter((x) => !Object.is(compiled.tanh(x), elementary.tanh(x)))).toEqual([])
  })

  test('pow, of a base that is not below zero', () => {
    const bases = [0, 1e-310, 1, 1 + 1e-9, 25, 1e308, Number.POSITIVE_INFINITY, Number.NaN]
    const powers = [0, 0.5, 1, 2, -1, 3, 1e10, ...beyond]
    const points = [
      ...bases.flatMap((x) => powers.map((y) => [x, y] as const)),
      ...spread(3).map((x) => [Math.abs(x), 30 * (2 * draw() - 1)] as const),
      ...spread(300).map((x) => [10 ** x, 2 * draw() - 1] as const),
    ]
    expect(points.filter(([x, y]) => !Object.is(compiled.pow(x, y), elementary.pow(x, y)))).toEqual([])
  })
})
