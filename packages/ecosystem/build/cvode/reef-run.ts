import { assemble, typicalParameters } from '../../src/assemble/assemble.ts'
import { type Model, stateId } from '../../src/assemble/model.ts'
import { timeline } from '../../src/simulate/index.ts'
import { startOf } from '../../src/start/start.ts'
import { reef, reefYear } from '../../src/testing/systems.ts'

/** Once a month; none on the day of an event. */
const monthly = (days: number): readonly number[] =>
  Array.from({ length: Math.floor(days / 30.4) }, (_, month) => 30.4 * (month + 1) - 0.35)

/** A year of the reef with everything on, or its first days, as both programs get it. */
export function reefRun(days = 365) {
  const model = assemble(reef)
  const parameters = typicalParameters(model)
  const start = startOf(model, parameters, { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }, 0)
  const happens = timeline({ system: reef, events: reefYear, from: 0, to: days, asOf: 0 })
  return { model, parameters, start, from: 0, to: days, timeline: happens, samples: monthly(days) }
}

const main = [
  'water.ammonia/N',
  'water.nitrite/N',
  'water.nitrate/N',
  'water.phosphate/P',
  'water.particles/N',
  'bed.slow/C',
  'rock.sorbed-fast/P',
  'rock.sorbed-slow/P',
  'media.ferric/P',
  'surface.rock_face.hair_green.open/C',
  'cover.rock_face.hair_green.open',
]

/** Largest difference of an account over the samples, relative to the most that it held. */
function difference(
  model: Model,
  id: string,
  ours: readonly Float64Array[],
  theirs: readonly Float64Array[],
): number {
  const index = model.states.findIndex((state) => stateId(state) === id)
  const most = Math.max(...theirs.map((states) => Math.abs(states[index])))
  return Math.max(...ours.map((states, k) => Math.abs(states[index] - theirs[k][index]))) / most
}

/** Main accounts by id, with how far the two runs are apart. */
export const differences = (
  model: Model,
  ours: readonly Float64Array[],
  theirs: readonly Float64Array[],
): readonly (readonly [string, number])[] => main.map((id) => [id, difference(model, id, ours, theirs)])
