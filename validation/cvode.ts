import {
  assemble,
  type Model,
  simulate,
  startOf,
  stateId,
  timeline,
  typicalParameters,
  usualSettings,
} from '@holdfast/ecosystem'
import { cSource } from '@holdfast/ecosystem/build/c-source'
import { reef, reefYear } from '@holdfast/ecosystem/testing/systems'
import type { Check } from './check.ts'
import { cvodeProgram } from './cvode/run-cvode.ts'

const days = 365
/** Twelve times a year, and the end; none on the day of an event. */
const samples = Array.from({ length: 12 }, (_, month) => 30.4 * (month + 1) - 0.35)

/** A year of the reef with everything on, as both programs get it. */
export function reefRun() {
  const model = assemble(reef)
  const parameters = typicalParameters(model)
  const start = startOf(model, parameters, { nitrate_mg_L: 5, phosphate_mg_L: 0.05 }, 0)
  const happens = timeline({ system: reef, events: reefYear, from: 0, to: days, asOf: 0 })
  return { model, parameters, start, from: 0, to: days, timeline: happens, samples }
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

/**
 * Our integrator beside CVODE on the same equations, exported to C from the same declarations: at usual
 * tolerance within 1 % of every main account, at a strict one within 0.02 %.
 */
export function againstCvode(): readonly Check[] {
  const question = reefRun()
  const { model } = question
  const program = cvodeProgram(cSource(model, question))
  if ('missing' in program) return [{ name: 'CVODE beside ours', outcome: 'skipped', says: program.missing }]
  const reference = program.run(1e-8, 1)
  program.remove()
  return [
    [usualSettings.tolerance, 0.01],
    [1e-6, 2e-4],
  ].flatMap(([tolerance, allowed]): Check[] => {
    const began = performance.now()
    const ours = simulate({ ...question, integrator: { ...usualSettings, tolerance } })
    const seconds = (performance.now() - began) / 1000
    const compared = main.map((id) => [id, difference(model, id, ours.samples, reference.samples)] as const)
    return compared.map(([id, off]) => ({
      name: `CVODE beside ours at ${tolerance}: ${id}`,
      outcome: off <= allowed ? 'passed' : 'failed',
      says: `${(off * 100).toPrecision(2)} % off, allowed ${allowed * 100} %; ours ${seconds.toFixed(3)} s, CVODE at 1e-8 ${reference.seconds.toFixed(3)} s`,
    }))
  })
}
