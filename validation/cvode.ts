import { simulate, usualSettings } from '@holdfast/ecosystem'
import { differences, reefRun } from '@holdfast/ecosystem/build/cvode/reef-run'
import { cvodeProgram } from '@holdfast/ecosystem/build/cvode/run-cvode'
import type { Check } from './check.ts'

/**
 * Our integrator beside CVODE on the same equations, exported to C from the same declarations: at usual
 * tolerance within 1 % of every main account, at a strict one within 0.02 %. The program compares the exported
 * derivatives with differences before it runs, and gives up where they differ.
 */
export function againstCvode(): readonly Check[] {
  const question = reefRun()
  const { model } = question
  const program = cvodeProgram(model, question)
  if ('missing' in program) return [{ name: 'CVODE beside ours', outcome: 'skipped', says: program.missing }]
  const reference = program.run({ tolerance: 1e-8, rates: 'plain', matrix: 'exact' })
  program.remove()
  return [
    [usualSettings.tolerance, 0.01],
    [1e-6, 2e-4],
  ].flatMap(([tolerance, allowed]): Check[] => {
    const began = performance.now()
    const ours = simulate({ ...question, integrator: { ...usualSettings, tolerance } })
    const seconds = (performance.now() - began) / 1000
    return differences(model, ours.samples, reference.samples).map(([id, off]) => ({
      name: `CVODE beside ours at ${tolerance}: ${id}`,
      outcome: off <= allowed ? 'passed' : 'failed',
      says: `${(off * 100).toPrecision(2)} % off, allowed ${allowed * 100} %; ours ${seconds.toFixed(3)} s, CVODE at 1e-8 ${reference.seconds.toFixed(3)} s`,
    }))
  })
}
