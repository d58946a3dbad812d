import { assemble, typicalParameters } from '../assemble/assemble.ts'
import { simulateTogether } from '../simulate/simulate.ts'
import { timeline } from '../simulate/timeline.ts'
import { startsOf } from '../start/start.ts'
import { chance } from './chance.ts'
import { reef, reefYear } from './systems.ts'

/**
 * What a year of the reef comes to, as a number a member: the same on every engine, in every batch and in any
 * number of workers.
 *
 * @param members  their numbers; each is drawn by its own
 */
export function goldenYear(members: readonly number[]): readonly number[] {
  const model = assemble(reef)
  const typical = typicalParameters(model)
  const drawn = members.map((number) => {
    const draw = chance(1000 + number)
    return typical.map((value) => value * (0.9 + 0.2 * draw()))
  })
  const opening = { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }
  const starts = startsOf(
    model,
    drawn.map((parameters) => ({ parameters, opening })),
    0,
  )
  const moments = timeline({ system: reef, events: reefYear, from: 0, to: 365, asOf: 0 })
  const samples = Array.from({ length: 12 }, (_, month) => 30.4 * month)
  return simulateTogether(
    { model, from: 0, to: 365, timeline: moments, samples },
    drawn.map((parameters, m) => ({ parameters, start: starts[m] })),
  ).map((run) => hashOf([...run.samples, run.end]))
}

/** FNV-1a over the halves of doubles. */
function hashOf(lists: readonly Float64Array[]): number {
  let hash = 0x811c9dc5
  for (const list of lists)
    for (const half of new Uint32Array(list.slice().buffer)) hash = Math.imul(hash ^ half, 0x01000193) >>> 0
  return hash
}
