import { simulate, usualSettings } from '@holdfast/ecosystem'
import type { Missing } from '@holdfast/ecosystem/build/cvode/compile-c'
import { differences, reefRun } from '@holdfast/ecosystem/build/cvode/reef-run'
import { desolveRun } from '@holdfast/ecosystem/build/desolve/run-desolve'
import { type ScriptedRun, scipyRun } from '@holdfast/ecosystem/build/scipy/run-scipy'
import type { Check } from './check.ts'

const allowed = 1e-4

/**
 * Our integrator beside a solver of SciPy on the equations of the reef, exported to Python from the same
 * declarations: three months with events.
 */
export const againstScipy = (): readonly Check[] =>
  against('SciPy', 92, (question) => scipyRun(question.model, question, { method: 'LSODA', tolerance: 1e-8 }))

/** Beside one of deSolve on the same equations in R: a month, for it takes its time. */
export const againstDesolve = (): readonly Check[] =>
  against('deSolve', 32, (question) =>
    desolveRun(question.model, question, { method: 'lsoda', tolerance: 1e-6 }),
  )

function against(
  name: string,
  days: number,
  run: (question: ReturnType<typeof reefRun>) => ScriptedRun | Missing,
): readonly Check[] {
  const question = reefRun(days)
  const theirs = run(question)
  if ('missing' in theirs) return [{ name: `${name} beside ours`, outcome: 'skipped', says: theirs.missing }]
  const ours = simulate({ ...question, integrator: { ...usualSettings, tolerance: 1e-7 } })
  return differences(question.model, ours.samples, theirs.samples).map(([id, off]) => ({
    name: `${name} beside ours: ${id}`,
    outcome: off <= allowed ? 'passed' : 'failed',
    says: `${off.toExponential(1)} off over ${days} days with ${question.timeline.length} moments, allowed ${allowed}; ${name} ${theirs.seconds.toFixed(1)} s`,
  }))
}
