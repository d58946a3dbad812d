import type { Model } from '../../src/assemble/model.ts'
import { cJacobian } from '../c-jacobian.ts'
import { cSource, type ExportedRun } from '../c-source.ts'
import { compileC, type Missing } from './compile-c.ts'
import driver from './driver.c?raw'
import equations from './equations.h?raw'
import forms from './forms.h?raw'

export interface CvodeRun {
  /** s of the processor for one run. */
  readonly seconds: number
  readonly steps: number
  readonly evaluations: number
  readonly jacobians: number
  readonly nonzeros: number
  readonly samples: readonly Float64Array[]
}

/** How the program is to run; see driver.c. */
export interface CvodeOptions {
  readonly tolerance: number
  readonly repeats?: number
  /** Highest order of the method, 5 at most. */
  readonly order?: number
  readonly rates?: 'plain' | 'quick'
  readonly matrix?: 'exact' | 'sparse'
}

/** Compiled once, run at several tolerances. */
export interface CvodeProgram {
  readonly run: (options: CvodeOptions) => CvodeRun
  readonly remove: () => void
}

const libraries = [
  '-lsundials_cvode',
  '-lsundials_nvecserial',
  '-lsundials_sunmatrixsparse',
  '-lsundials_sunlinsolklu',
  '-lklu',
  '-lm',
]

/** A model's equations in C with their exact derivatives, files by name: see equations.h. */
export const equationsInC = (model: Model, exported: ExportedRun): Readonly<Record<string, string>> => ({
  'equations.h': equations,
  'forms.h': forms,
  'model.h': `${cSource(model, exported)}${cJacobian(model)}`,
})

/** Compiles the equations with CVODE and KLU. */
export function cvodeProgram(model: Model, exported: ExportedRun): CvodeProgram | Missing {
  const program = compileC({ 'cvode.c': driver, ...equationsInC(model, exported) }, libraries)
  if ('missing' in program) return program
  const run = ({
    tolerance,
    repeats = 1,
    order = 5,
    rates = 'quick',
    matrix = 'sparse',
  }: CvodeOptions): CvodeRun => {
    const [head, ...rows] = program.run([tolerance, repeats, order, rates, matrix].map(String))
    const [seconds, steps, evaluations, jacobians, nonzeros] = head.map(Number)
    return {
      seconds,
      steps,
      evaluations,
      jacobians,
      nonzeros,
      samples: rows.map((row) => Float64Array.from(row, Number)),
    }
  }
  return { run, remove: program.remove }
}
