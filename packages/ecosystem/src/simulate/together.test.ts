import { expect, test } from 'vitest'
import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { startsOf } from '../start/start.ts'
import { chance } from '../testing/chance.ts'
import { reef } from '../testing/systems.ts'
import { kernelOf } from './model-kernel.ts'
import { simulateTogether } from './simulate.ts'
import { timeline } from './timeline.ts'

const model = assemble(reef)
const typical = typicalParameters(model)
const days = 60
const happens = timeline({ system: reef, events: [], from: 0, to: days, asOf: 0 })
const question = { model, from: 0, to: days, timeline: happens, samples: [10.3, 30, 45.5] }

/** Members some way off the middle of their facts, each by its number. */
const members = Array.from({ length: 5 }, (_, number) => {
  const draw = chance(100 + number)
  return { parameters: typical.map((value) => value * (0.9 + 0.2 * draw())) }
})
const starts = startsOf(
  model,
  members.map(({ parameters }) => ({ parameters, opening: { nitrate_mg_L: 5, phosphate_mg_L: 0.05 } })),
  0,
)
const runs = members.map(({ parameters }, m) => ({ parameters, start: starts[m] }))

const ends = (which: readonly number[]): ReadonlyMap<number, readonly number[]> => {
  const found = simulateTogether(
    question,
    which.map((member) => runs[member]),
  )
  return new Map(
    which.map((member, k) => [member, [...found[k].samples, found[k].end].flatMap((y) => Array.from(y))]),
  )
}

const alone = new Map(members.flatMap((_, member) => [...ends([member])]))

test.each([
  ['in a batch of all', [0, 1, 2, 3, 4]],
  ['in a batch with others beside it', [4, 2, 0, 3, 1]],
  ['beside itself', [1, 1]],
] as const)('a member has the same bits alone and %s', (_, batch) => {
  for (const [member, bits] of ends(batch)) expect(bits).toEqual(alone.get(member))
})

test('members that differ come to different ends', () => {
  const nitrate = members.map((_, member) => alone.get(member)?.[0])
  expect(new Set(nitrate).size).toBe(members.length)
})

test('the memory of a kernel is laid out once: runs after the first take no more of it', () => {
  ends([0, 1])
  const { memory } = kernelOf(model).kernel.memory
  const before = memory.buffer.byteLength
  for (let again = 0; again < 5; again++) ends([0, 1])
  expect(memory.buffer.byteLength).toBe(before)
})
