import { expect, test } from 'vitest'
import type { Member, Past } from './past.ts'
import { resampled } from './resampled.ts'

const none = new Float64Array()
const member = (n: number): Member => ({
  scores: new Map(),
  parameters: Float64Array.of(n),
  states: none,
  settings: none,
  course: [],
})
const past = (weights: readonly number[]): Past => ({
  model: {} as Past['model'],
  seen: [],
  days: [],
  members: weights.map((_, n) => member(n)),
  weights: { of: weights, effective: 1, tempering: 0.5 },
  readingsUsed: 0,
})
const picked = (known: Past) => known.members.map(({ parameters }) => parameters[0])

test('a member is picked as often as it weighs, and one without weight never', () => {
  const few = resampled(past([0.5, 0, 0.25, 0, 0.25]), 4)
  expect(picked(few)).toEqual([0, 0, 2, 4])
  expect(few.weights).toEqual({ of: [0.25, 0.25, 0.25, 0.25], effective: 4, tempering: 0.5 })
})

test('no more members than there are come as they are', () => {
  const all = past([0.9, 0.1])
  expect(resampled(all, 2)).toBe(all)
})
