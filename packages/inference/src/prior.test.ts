import { facts } from '@holdfast/facts'
import { expect, test } from 'vitest'
import { priorQuantile } from './prior.ts'

test('every fact has its low, typical and high end at 5, 50 and 95 % of its prior', () => {
  const banded = facts().filter(({ low, high }) => low > 0 && low !== high)
  expect(banded.length).toBeGreaterThan(100)
  for (const fact of banded) {
    expect(priorQuantile(fact, 0.05) / fact.low, fact.id).toBeCloseTo(1, 6)
    expect(priorQuantile(fact, 0.5) / fact.typical, fact.id).toBeCloseTo(1, 6)
    expect(priorQuantile(fact, 0.95) / fact.high, fact.id).toBeCloseTo(1, 6)
  }
})

test('a share never passes 1 and a rate never falls below 0', () => {
  for (const fact of facts())
    for (const p of [1e-6, 0.01, 0.3, 0.9, 1 - 1e-6]) {
      const value = priorQuantile(fact, p)
      expect(value, fact.id).toBeGreaterThanOrEqual(fact.signed ? Number.NEGATIVE_INFINITY : 0)
      if (fact.unit === '1' && fact.high <= 1) expect(value, fact.id).toBeLessThanOrEqual(1)
    }
})

test('a band that reaches zero has a share of its prior at zero exactly', () => {
  const band = { low: 0, typical: 2, high: 10, unit: 'd⁻¹', zeroShare: 0.3 }
  expect(priorQuantile(band, 0.29)).toBe(0)
  expect(priorQuantile(band, 0.31)).toBeGreaterThan(0)
  expect(priorQuantile(band, 0.65)).toBeCloseTo(2, 6)
})

test('equal ends are a constant', () => {
  expect(priorQuantile({ low: 3, typical: 3, high: 3 }, 0.01)).toBe(3)
})
