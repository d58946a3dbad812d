import type { Observation } from '@holdfast/ecosystem'
import { catalogueAlone } from '@holdfast/facts'
import { expect, test } from 'vitest'
import * as kit from './kit.ts'

const logLikelihood = (reading: Observation, expected: number) =>
  kit.logLikelihood(reading, expected, catalogueAlone)
const readingInterval = (reading: Observation) => kit.readingInterval(reading, catalogueAlone)

const phosphate = (value: number, belowDetection = false): Observation => ({
  day: 20_000,
  quantity: 'phosphate',
  value,
  belowDetection,
})

test('a reading is likeliest where the model says the same', () => {
  const at = [0.02, 0.05, 0.1, 0.2].map((expected) => logLikelihood(phosphate(0.1), expected))
  expect(Math.max(...at)).toBe(at[2])
})

test('"<0.03" is no reading of 0.03: less and less is ever likelier, and the limit counts', () => {
  const nothing = phosphate(0.03, true)
  expect(logLikelihood(nothing, 0.005)).toBeGreaterThan(logLikelihood(nothing, 0.03))
  expect(logLikelihood(nothing, 0.005)).not.toBeCloseTo(logLikelihood(phosphate(0.03), 0.005))
  expect(logLikelihood(phosphate(0.1, true), 0.06)).toBeGreaterThan(logLikelihood(nothing, 0.06))
})

test('far below the limit a kit reads nothing for sure, far above it hardly ever', () => {
  const chance = (expected: number) => Math.exp(logLikelihood(phosphate(0.03, true), expected))
  expect(chance(0)).toBeGreaterThan(0.98)
  expect(chance(0.03)).toBeCloseTo(0.5, 6)
  expect(chance(0.3)).toBeLessThan(1e-3)
  // Above the limit less is always likelier, however far: the tail never goes flat.
  for (const expected of [0.05, 0.1, 0.14, 0.16, 0.5, 5])
    expect(chance(expected)).toBeGreaterThan(chance(1.1 * expected))
})

test('a slip of the pen is improbable and not impossible', () => {
  const slip = logLikelihood(phosphate(1.5), 0.15)
  expect(slip).toBeLessThan(logLikelihood(phosphate(0.2), 0.15) - 3)
  expect(slip).toBeGreaterThan(-40)
})

test('the interval of a reading holds it, and that of a cover stays within the surface', () => {
  const { low, high } = readingInterval(phosphate(0.1))
  expect(low).toBeLessThan(0.1)
  expect(high).toBeGreaterThan(0.1)
  expect(readingInterval({ day: 0, quantity: 'cover', value: 0.98, belowDetection: false }).high).toBe(1)
})
