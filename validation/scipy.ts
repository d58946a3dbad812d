import { simulate, usualSettings } from '@holdfast/ecosystem'
import { differences, reefRun } from '@holdfast/ecosystem/build/cvode/reef-run'
import { scipyRun } from '@holdfast/ecosystem/build/scipy/run-scipy'
import type { Check } from './check.ts'

const days = 92
const allowed = 1e-4

/**
 * Our integrator beside a solver of SciPy on the equations of the reef, exported to Python from the same
 * declarations: three months with events.
 */
export function againstScipy(): readonly Check[] {
  const question = reefRun(days)
  const { model } = question
  const theirs = scipyRun(model, question, { method: 'LSODA', tolerance: 1e-8 })
  if ('missing' in theirs) return [{ name: 'SciPy beside ours', outcome: 'skipped', says: theirs.missing }]
  const ours = simulate({ ...question, integrator: { ...usualSettings, tolerance: 1e-7 } })
  return differences(model, ours.samples, theirs.samples).map(([id, off]) => ({
    name: `SciPy beside ours: ${id}`,
    outcome: off <= allowed ? 'passed' : 'failed',
    says: `${off.toExponential(1)} off over ${days} days with ${question.timeline.length} moments, allowed ${allowed}; SciPy ${theirs.seconds.toFixed(1)} s`,
  }))
}
