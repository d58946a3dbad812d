import { expect, test } from 'vitest'
import { between, bookBetween } from './between.ts'
import type { Equations } from './equations.ts'
import type { Step } from './integrate.ts'

/** One flow from the first state to the second, over ten days; slopes as noisy as a fast balance makes them. */
const step = (flow: number, rateBefore: number, rateAfter: number): Step => ({
  from: 0,
  to: 10,
  before: Float64Array.of(5, 1),
  after: Float64Array.of(5 - flow, 1 + flow),
  slopeBefore: Float64Array.of(-rateBefore, rateBefore),
  slopeAfter: Float64Array.of(-rateAfter, rateAfter),
  flows: Float64Array.of(flow),
  ratesBefore: Float64Array.of(rateBefore),
  ratesAfter: Float64Array.of(rateAfter),
  totals: Float64Array.of(100),
})
const equations: Equations = {
  states: 2,
  fluxes: 1,
  from: Int32Array.of(0),
  to: Int32Array.of(1),
  floored: Uint8Array.of(1, 1),
  tolerance: Float64Array.of(1e-6, 1e-6),
  rates: () => undefined,
}
const days = Array.from({ length: 101 }, (_, k) => k / 10)
const read = (of: Step): readonly Float64Array[] =>
  days.map((day) => {
    const into = new Float64Array(2)
    between(of, day, into)
    return into
  })

test('a smooth course is read to the third order: a cubic comes back as it was', () => {
  // y = 5 - t²/25 - t³/500 has these ends and slopes.
  const smooth = step(6, 0, 0.8 + 0.6)
  read(smooth).forEach(([y], k) => {
    expect(y).toBeCloseTo(5 - days[k] ** 2 / 25 - days[k] ** 3 / 500, 10)
  })
})

test('with slopes made of noise no reading lies outside the two ends', () => {
  for (const [first] of read(step(4.9, -300, 900))) {
    expect(first).toBeGreaterThanOrEqual(5 - 4.9 - 1e-12)
    expect(first).toBeLessThanOrEqual(5 + 1e-12)
  }
})

test('a book inside a step balances: what left one account is in the other', () => {
  for (const day of days) {
    const [flows, states] = [new Float64Array(1), new Float64Array(2)]
    bookBetween(step(4, 2, 0.1), day, equations, flows, states)
    expect(states[0]).toBe(5 - flows[0])
    expect(states[1]).toBe(1 + flows[0])
  }
})
