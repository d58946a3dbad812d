import { expect, test } from 'vitest'
import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { stateIndex } from '../assemble/model.ts'
import { startOf } from '../start/start.ts'
import { reef } from '../testing/systems.ts'
import { simulate } from './simulate.ts'
import { timeline } from './timeline.ts'

const model = assemble(reef)
const parameters = typicalParameters(model)
const start = startOf(model, parameters, { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }, 0)
const happens = timeline({ system: reef, events: [], from: 0, to: 90, asOf: 0 })
const question = { model, parameters, start, from: 0, to: 90, timeline: happens }
const bits = (states: Float64Array): string =>
  Buffer.from(states.buffer, states.byteOffset, states.byteLength).toString('hex')
const hours = Array.from({ length: 90 * 24 }, (_, hour) => hour / 24)

test('looking at the water every hour changes no bit of where it ends', () => {
  expect(bits(simulate({ ...question, samples: hours }).end)).toBe(bits(simulate(question).end))
})

test('the same run twice gives the same bits, and leaves what it was given as it was', () => {
  const given = bits(start)
  expect(bits(simulate(question).end)).toBe(bits(simulate(question).end))
  expect(bits(start)).toBe(given)
})

test('closing the books at any hour changes no bit of where it ends', () => {
  const inside = (end: Float64Array): Float64Array =>
    end.filter((_, i) => {
      const entry = model.states[i]
      return entry.kind === 'plain' || entry.account.side === 'inside'
    })
  expect(bits(inside(simulate({ ...question, marks: [0, 3.25, 30.7, 61.1, 90] }).end))).toBe(
    bits(inside(simulate(question).end)),
  )
})

test('books of two spans add up to the books of both', () => {
  const { marks } = simulate({ ...question, marks: [0, 30.7, 90] })
  const whole = simulate({ ...question, marks: [0, 90] }).marks
  marks[2].flows.forEach((flow, k) => {
    expect(Math.abs(flow - whole[1].flows[k])).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(flow)))
  })
})

test('a water change on a day splits that day: what was dissolved before it leaves in part', () => {
  const nitrate = stateIndex(model, 'water.nitrate/N')
  const change = happens.find((moment) => 'happens' in moment && moment.happens === 'water change')
  expect(change?.day).toBe(14)
  const { samples } = simulate({ ...question, samples: [14, 14.001] })
  // 60 of 600 L leave; what comes in holds 1 mg/L from the source and 0.1 from the salt (62.005 g/mol).
  const expected = 0.9 * samples[0][nitrate] + (60 * 1.1 * 1000) / 62.005
  expect(Math.abs(samples[1][nitrate] / expected - 1)).toBeLessThan(1e-3)
})
