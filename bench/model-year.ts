/** What a year of the reef costs, and what that is against others on this very machine. */
import { equationsOf, type Simulation, simulate, usualSettings } from '@holdfast/ecosystem'
import { cSource } from '@holdfast/ecosystem/build/c-source'
import { differences, reefRun } from '@holdfast/ecosystem/build/cvode/reef-run'
import { cvodeProgram } from '@holdfast/ecosystem/build/cvode/run-cvode'
import { plainRates } from '@holdfast/ecosystem/build/plain-rates'
import { milliseconds } from './milliseconds.ts'
import { table } from './table.ts'

const question = reefRun()
const { model, parameters, start } = question
const settings = Float64Array.from(model.settings.values)

const usual = milliseconds(() => simulate(question), 20)
const strictSettings = { ...usualSettings, tolerance: 1e-6 }
const strict = milliseconds(() => simulate({ ...question, integrator: strictSettings }), 10)
const { statistics } = simulate(question)

const rates = equationsOf(model, parameters, settings).rates
const plain = plainRates(model)
const out = new Float64Array(model.fluxes.length)
const kernel = milliseconds(() => {
  for (let n = 0; n < 10_000; n++) rates(start, out)
}, 10)
const walked = milliseconds(() => {
  for (let n = 0; n < 20; n++) plain({ y: start, settings, parameters }, out)
}, 10)
const kernelOnce = kernel / 10_000
const walkedOnce = walked / 20

console.log(
  `Reef of 600 L, a year with ${question.timeline.length} moments: ${model.states.length} states, ${model.fluxes.length} flows,`,
)
console.log(
  `${statistics.steps} steps, ${statistics.rejected} rejected, ${statistics.limited} limited, ${statistics.evaluations} evaluations.`,
)
console.log()
console.log(
  table([
    ['right-hand side', 'µs', 'ratio'],
    ['generated kernel', (kernelOnce * 1000).toFixed(1), '1'],
    ['formulas walked as declared', (walkedOnce * 1000).toFixed(1), (walkedOnce / kernelOnce).toFixed(0)],
  ]),
)
console.log()
console.log(table([['a year for one member', 'ms', 'ratio', 'farthest from CVODE at 1e-8'], ...years()]))

/** Ours at two tolerances and CVODE at three; differences where CVODE is there to tell them. */
function years(): readonly (readonly string[])[] {
  const program = cvodeProgram(cSource(model, question))
  const row = (name: string, ms: number, off: string): readonly string[] => [
    name,
    ms.toFixed(1),
    (ms / usual).toFixed(2),
    off,
  ]
  if ('missing' in program) {
    console.log(`Without CVODE: ${program.missing}`)
    return [row('ours at 1e-3, as used', usual, '?'), row('ours at 1e-6', strict, '?')]
  }
  const reference = program.run(1e-8, 1)
  const off = ({ samples }: Pick<Simulation, 'samples'>): string =>
    `${(100 * Math.max(...differences(model, samples, reference.samples).map(([, off]) => off))).toPrecision(2)} %`
  const theirs = [1e-3, 1e-5, 1e-8].map((tolerance) => {
    const run = program.run(tolerance, 5)
    return row(`CVODE in C, dense, at ${tolerance}`, run.seconds * 1000, tolerance === 1e-8 ? '0' : off(run))
  })
  program.remove()
  return [
    row('ours at 1e-3, as used', usual, off(simulate(question))),
    row('ours at 1e-6', strict, off(simulate({ ...question, integrator: strictSettings }))),
    ...theirs,
  ]
}
