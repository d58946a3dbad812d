import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Model } from '../../src/assemble/model.ts'
import { cJacobian } from '../c-jacobian.ts'
import { cSource, type ExportedRun } from '../c-source.ts'
import driver from './driver.c?raw'
import forms from './forms.h?raw'

export interface CvodeRun {
  /** s for one run, wall clock. */
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

/** Why there is none, in a sentence. */
export interface Missing {
  readonly missing: string
}

const libraries = [
  '-lsundials_cvode',
  '-lsundials_nvecserial',
  '-lsundials_sunmatrixsparse',
  '-lsundials_sunlinsolklu',
  '-lklu',
  '-lm',
]

const packages = ['gcc', 'libsundials-dev', 'libsuitesparse-dev']

/**
 * Compiles the equations with CVODE and KLU of the SUNDIALS and SuiteSparse libraries, as a distribution
 * carries them. As root it tries to install what is missing, with apt-get.
 */
export function cvodeProgram(model: Model, exported: ExportedRun): CvodeProgram | Missing {
  const folder = mkdtempSync(join(tmpdir(), 'holdfast-cvode-'))
  const remove = (): void => rmSync(folder, { recursive: true, force: true })
  for (const [name, text] of [
    ['driver.c', driver],
    ['forms.h', forms],
    ['model.h', `${cSource(model, exported)}${cJacobian(model)}`],
  ])
    writeFileSync(join(folder, name), text)
  const program = join(folder, 'cvode')
  const compile = (): string | undefined => {
    const { status, stderr, error } = spawnSync(
      'gcc',
      [
        '-O3',
        '-march=native',
        '-I/usr/include/suitesparse',
        '-o',
        program,
        join(folder, 'driver.c'),
        ...libraries,
      ],
      { encoding: 'utf8' },
    )
    if (error) return 'gcc is not installed'
    return status === 0 ? undefined : (stderr.split('\n').find((line) => line.includes('error')) ?? stderr)
  }
  let missing = compile()
  if (missing !== undefined && process.getuid?.() === 0) {
    spawnSync('apt-get', ['install', '-y', ...packages], { stdio: 'ignore' })
    missing = compile()
  }
  if (missing !== undefined) {
    remove()
    return {
      missing: `CVODE could not be compiled (${missing.trim()}). On Debian: apt-get install ${packages.join(' ')}.`,
    }
  }
  const run = ({
    tolerance,
    repeats = 1,
    order = 5,
    rates = 'quick',
    matrix = 'sparse',
  }: CvodeOptions): CvodeRun => {
    const words = [tolerance, repeats, order, rates, matrix].map(String)
    const { status, stdout, stderr } = spawnSync(program, words, { encoding: 'utf8', maxBuffer: 1e9 })
    if (status !== 0) throw new Error(`CVODE at ${tolerance} gave up: ${stderr}`)
    const [head, ...rows] = stdout.trim().split('\n')
    const [seconds, steps, evaluations, jacobians, nonzeros] = head.split(' ').map(Number)
    return {
      seconds,
      steps,
      evaluations,
      jacobians,
      nonzeros,
      samples: rows.map((row) => Float64Array.from(row.split(' '), Number)),
    }
  }
  return { run, remove }
}
