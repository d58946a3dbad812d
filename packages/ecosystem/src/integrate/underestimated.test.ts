import { exp } from '@holdfast/elementary'
import { afterEach, expect, test, vi } from 'vitest'
import { alone } from '../testing/alone.ts'
import { FastestDecay } from './spectral-radius.ts'

afterEach(() => void vi.restoreAllMocks())

const days = 5
const leak = 0.1

/** Two accounts that find their balance within minutes, and lose to a third over weeks. */
function run() {
  const integrator = alone(
    {
      states: 3,
      from: Int32Array.of(0, 1),
      to: Int32Array.of(1, 2),
      floored: Uint8Array.of(1, 1, 1),
      tolerance: Float64Array.of(1e-6, 1e-6, 1e-6),
      rates: (y, out) => {
        out[0] = 500 * (y[0] - y[1])
        out[1] = leak * y[1]
      },
    },
    Float64Array.of(2, 0, 0),
  )
  integrator.run(0, days)
  return integrator
}

/** Every fastest decay that is found is told as so much of it. */
function tellOnly(part: number): void {
  const { find } = FastestDecay.prototype
  vi.spyOn(FastestDecay.prototype, 'find').mockImplementation(function (this: FastestDecay, wants, found) {
    find.call(this, wants, (member, fastest, evaluations) => found(member, part * fastest, evaluations))
  })
}

test('a fastest decay told a thousand times too slow costs steps and no truth: no run goes unstable in silence', () => {
  const sure = run()
  tellOnly(1e-3)
  const misled = run()
  expect(misled.statistics.steps).toBeGreaterThan(5 * sure.statistics.steps)
  // Both share what is left: the sum falls at half of the leak.
  const left = 2 * exp((-leak / 2) * days)
  for (const { states } of [sure, misled]) {
    const [one, other] = states()
    expect(Math.abs((one + other) / left - 1)).toBeLessThan(0.01)
    expect(Math.abs(one - other)).toBeLessThan(0.02 * left)
  }
})
