import { describe, expect, test } from 'vitest'
import { type Booked, bookBetween } from './between.ts'
import { foreignKernel } from './foreign.ts'
import type { Shape } from './shape.ts'

/** One flow from the first state to the second, over ten days; slopes as noisy as a fast balance makes them. */
const step = (flow: number, rateBefore: number, rateAfter: number): Booked => ({
  from: 0,
  to: 10,
  before: Float64Array.of(5, 1),
  flows: Float64Array.of(flow),
  ratesBefore: Float64Array.of(rateBefore),
  ratesAfter: Float64Array.of(rateAfter),
})
const shape: Shape = {
  states: 2,
  from: Int32Array.of(0),
  to: Int32Array.of(1),
  floored: Uint8Array.of(1, 1),
  tolerance: Float64Array.of(1e-6, 1e-6),
}
const days = Array.from({ length: 101 }, (_, k) => k / 10)

/** States inside the same step, as the kernel reads them: of the first member, and of the second. */
function read(member: 0 | 1, flow: number, rateBefore: number, rateAfter: number): readonly Float64Array[] {
  const kernel = foreignKernel({ ...shape, rates: () => undefined })
  const { memory } = kernel
  const { at } = memory
  memory.set(at.start, member, Float64Array.of(5, 1))
  memory.set(at.stage, member, Float64Array.of(5 - flow, 1 + flow))
  memory.set(at.slopeStart, member, Float64Array.of(-rateBefore, rateBefore))
  memory.set(at.slope, member, Float64Array.of(-rateAfter, rateAfter))
  const into = memory.room(64)
  return days.map((day) => {
    kernel.run.between(into, 1 - member, member, 10, 10, day / 10, day / 10)
    return memory.get(into, member)
  })
}

describe.each([0, 1] as const)('of member %i', (member) => {
  test('a smooth course is read to the third order: a cubic comes back as it was', () => {
    // y = 5 - t²/25 - t³/500 has these ends and slopes.
    read(member, 6, 0, 0.8 + 0.6).forEach(([y], k) => {
      expect(y).toBeCloseTo(5 - days[k] ** 2 / 25 - days[k] ** 3 / 500, 10)
    })
  })

  test('with slopes made of noise no reading lies outside the two ends', () => {
    for (const [first] of read(member, 4.9, -300, 900)) {
      expect(first).toBeGreaterThanOrEqual(5 - 4.9 - 1e-12)
      expect(first).toBeLessThanOrEqual(5 + 1e-12)
    }
  })
})

test('a book inside a step balances: what left one account is in the other', () => {
  for (const day of days) {
    const [flows, states] = [new Float64Array(1), new Float64Array(2)]
    bookBetween(step(4, 2, 0.1), day, shape, flows, states)
    expect(states[0]).toBe(5 - flows[0])
    expect(states[1]).toBe(1 + flows[0])
  }
})
