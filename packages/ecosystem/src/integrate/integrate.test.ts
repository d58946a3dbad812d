import { exp } from '@holdfast/elementary'
import { describe, expect, test } from 'vitest'
import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { kernelOf } from '../simulate/model-kernel.ts'
import { startOf } from '../start/start.ts'
import { alone } from '../testing/alone.ts'
import { fixedSteps, orderOf } from '../testing/order.ts'
import { reef } from '../testing/systems.ts'
import type { Equations } from './equations.ts'
import { foreignKernel } from './foreign.ts'
import { NotANumber } from './not-a-number.ts'
import { usualSettings } from './settings.ts'

/** Flows between a few states, all of them floored. */
const flowing = (
  ends: readonly (readonly [number, number])[],
  states: number,
  rates: (y: Float64Array, out: Float64Array) => void,
): Equations => ({
  states,
  from: Int32Array.from(ends, ([from]) => from),
  to: Int32Array.from(ends, ([, to]) => to),
  floored: new Uint8Array(states).fill(1),
  tolerance: new Float64Array(states).fill(1e-6),
  rates,
})

describe('the declared order of the method is two', () => {
  test('on a smooth chain of reactions', () => {
    const chain = flowing(
      [
        [0, 1],
        [1, 2],
      ],
      3,
      (y, out) => {
        out[0] = (2 * y[0]) / (1 + y[0])
        out[1] = 0.7 * y[1] * y[1]
      },
    )
    const order = orderOf(
      (steps) => fixedSteps(foreignKernel(chain), [1.5, 0.2, 0], 2, steps),
      [20, 40, 80, 160],
      5120,
    )
    expect(order).toBeGreaterThan(1.7)
    expect(order).toBeLessThan(2.4)
  })

  test('on the reef between two events', () => {
    const model = assemble(reef)
    const parameters = typicalParameters(model)
    const start = startOf(model, parameters, { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }, 0)
    const compiled = kernelOf(model)
    compiled.setParameters(0, parameters)
    compiled.setSettings(model.settings.values)
    const { kernel } = compiled
    // A week first, so that the error of the jump at the start is over.
    const begin = fixedSteps(kernel, start, 7, 2000)
    // Steps short beside what sand takes up within hours; with longer ones the error does not fall evenly yet.
    const order = orderOf((steps) => fixedSteps(kernel, begin, 4, steps), [640, 1280, 2560], 20480)
    expect(order).toBeGreaterThan(1.7)
    expect(order).toBeLessThan(2.4)
  }, 60_000)

  test('with its own steps a run comes nearer to the truth the stricter it is asked to be', () => {
    const decay = flowing([[0, 1]], 2, (y, out) => {
      out[0] = y[0]
    })
    const missed = [1e-3, 1e-5, 1e-7].map((tolerance) => {
      const integrator = alone(decay, Float64Array.of(1, 0), { ...usualSettings, tolerance })
      integrator.run(0, 3)
      return Math.abs(integrator.states()[0] - exp(-3))
    })
    expect(missed[0]).toBeLessThan(3e-3)
    expect(missed[1]).toBeLessThan(missed[0] / 5)
    expect(missed[2]).toBeLessThan(missed[1] / 5)
  })
})

describe('a stiff linear balance', () => {
  const fast = 5000
  const balance = flowing(
    [
      [0, 1],
      [1, 2],
    ],
    3,
    (y, out) => {
      out[0] = fast * (y[0] - y[1])
      out[1] = 0.1 * y[1]
    },
  )

  test('stays bounded and true in steps of many times its fastest day', () => {
    const integrator = alone(balance, Float64Array.of(2, 0, 0))
    integrator.run(0, 20)
    // Both share what is left: the sum falls at half of 0.1 a day.
    const left = 2 * exp(-0.05 * 20)
    expect(Math.abs(integrator.states()[0] + integrator.states()[1] - left)).toBeLessThan(2e-3 * left)
    expect(Math.abs(integrator.states()[0] - integrator.states()[1])).toBeLessThan(1e-2 * left)
    // An explicit method without stages would need a step of 2 / 10 000 day.
    expect(integrator.statistics.steps).toBeLessThan(400)
    expect(integrator.statistics.evaluations).toBeLessThan(20 * fast)
  })
})

describe('the limiter', () => {
  // A removal that does not ask what is there: no formula of ours is so, but a long step can look it.
  const greedy = flowing(
    [
      [0, 1],
      [0, 2],
    ],
    3,
    (y, out) => {
      out[0] = y[0] > 0 ? 3 : 0
      out[1] = y[0] > 0 ? 1 : 0
    },
  )

  test('a naive step would take the account below zero, and ours does not', () => {
    expect(1 - (3 + 1) * 1).toBeLessThan(0)
    const integrator = alone(greedy, Float64Array.of(1, 0, 0))
    integrator.run(0, 0.26)
    expect(integrator.states()[0]).toBeGreaterThanOrEqual(0)
    expect(integrator.statistics.limited).toBeGreaterThan(0)
  })

  test('what it scales it scales at both ends: nothing is lost and both takers get their proportion', () => {
    const integrator = alone(greedy, Float64Array.of(1, 0, 0))
    integrator.run(0, 0.26)
    const [left, three, one] = integrator.states()
    expect(left + three + one).toBeCloseTo(1, 10)
    expect(three / one).toBeCloseTo(3, 9)
  })
})

test('steps end where they are told to end, on the very day', () => {
  const ends: number[] = []
  const decay = flowing([[0, 1]], 2, (y, out) => {
    out[0] = 0.3 * y[0]
  })
  const integrator = alone(decay, Float64Array.of(1, 0))
  for (const [from, to] of [
    [0, 0.1],
    [0.1, 3.7],
    [3.7, 10],
  ])
    integrator.run(from, to, (lane) => ends.push(lane.end))
  for (const day of [0.1, 3.7, 10]) expect(ends).toContain(day)
  expect(ends).toEqual([...ends].sort((a, b) => a - b))
})

test('a rate that is no number stops the run and says which states it spoilt', () => {
  const broken = flowing([[0, 1]], 2, (y, out) => {
    out[0] = (y[1] / y[1]) * y[0]
  })
  const integrator = alone(broken, Float64Array.of(1, 0))
  expect(() => integrator.run(0, 1)).toThrow(NotANumber)
  expect(() => integrator.run(0, 1)).toThrow('States 0, 1 are no numbers.')
})
