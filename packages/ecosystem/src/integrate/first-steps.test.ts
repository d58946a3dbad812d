import { expect, test } from 'vitest'
import { foreignKernel } from './foreign.ts'
import { Integrator } from './integrate.ts'

/** A balance that a dose upsets each day; each is like the others, or of a kind of its own. */
function dosedDaily(named: (day: number) => string) {
  const kernel = foreignKernel({
    states: 2,
    from: Int32Array.of(0, 1),
    to: Int32Array.of(1, -1),
    floored: Uint8Array.of(1, 1),
    tolerance: Float64Array.of(1e-6, 1e-6),
    rates: (y, out) => {
      out[0] = 12 * y[0] * y[0]
      out[1] = 0.2 * y[1]
    },
  })
  const { memory } = kernel
  const integrator = new Integrator(kernel)
  let states: Float64Array = Float64Array.of(0, 1)
  for (let day = 0; day < 20; day++) {
    states[0] += 1
    memory.set(memory.at.start, 0, states)
    integrator.run(day, day + 1, 1, undefined, { after: named(day) })
    states = memory.get(memory.at.start, 0)
  }
  return { states, ...integrator.lanes[0].statistics }
}

test('after a dose that came before, steps set out as they did then: hardly any is tried too long', () => {
  const alike = dosedDaily(() => 'dose')
  const apart = dosedDaily((day) => `dose ${day}`)
  expect(alike.rejected).toBeLessThan(5)
  expect(alike.evaluations).toBeLessThan(apart.evaluations)
  expect(Math.abs(alike.states[1] / apart.states[1] - 1)).toBeLessThan(1e-3)
})
