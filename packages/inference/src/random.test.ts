import { expect, test } from 'vitest'
import { normal, uniform } from './random.ts'

const draws = Array.from({ length: 20_000 }, (_, member) => uniform(7, member, 'foam.k.tank'))
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length

test('draws are spread evenly between 0 and 1', () => {
  expect(mean(draws)).toBeCloseTo(0.5, 2)
  for (let tenth = 0; tenth < 10; tenth++) {
    const share = draws.filter((u) => u >= tenth / 10 && u < (tenth + 1) / 10).length / draws.length
    // Five spreads of a binomial share of a tenth among 20,000.
    expect(Math.abs(share - 0.1)).toBeLessThan(0.011)
  }
})

test('draws of neighbours, names and seeds have nothing to do with each other', () => {
  const others = [
    draws.map((_, member) => uniform(7, member + 1, 'foam.k.tank')),
    draws.map((_, member) => uniform(7, member, 'foam.k.tanl')),
    draws.map((_, member) => uniform(8, member, 'foam.k.tank')),
  ]
  for (const other of others) {
    const together = mean(draws.map((u, i) => (u - 0.5) * (other[i] - 0.5))) * 12
    expect(Math.abs(together)).toBeLessThan(0.035)
  }
})

test('a draw depends on seed, member and name and on nothing else', () => {
  expect(uniform(7, 11, 'a')).toBe(uniform(7, 11, 'a'))
  expect(normal(7, 11, 'a')).not.toBe(normal(7, 12, 'a'))
})
