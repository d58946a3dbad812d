import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import driver from './driver.c?raw'
import forms from './forms.h?raw'

export interface CvodeRun {
  /** s for one run, wall clock. */
  readonly seconds: number
  readonly steps: number
  readonly evaluations: number
  readonly samples: readonly Float64Array[]
}

/** Compiled once, run at several tolerances. */
export interface CvodeProgram {
  readonly run: (tolerance: number, repeats: number) => CvodeRun
  readonly remove: () => void
}

/** Why there is none, in a sentence. */
export interface Missing {
  readonly missing: string
}

const libraries = [
  '-lsundials_cvode',
  '-lsundials_nvecserial',
  '-lsundials_sunmatrixdense',
  '-lsundials_sunlinsoldense',
  '-lm',
]

/**
 * Compiles the equations with CVODE of the SUNDIALS library, as a distribution carries it. As root it
 * tries to install what is missing, with apt-get.
 */
export function cvodeProgram(model: string): CvodeProgram | Missing {
  const folder = mkdtempSync(join(tmpdir(), 'holdfast-cvode-'))
  const remove = (): void => rmSync(folder, { recursive: true, force: true })
  for (const [name, text] of [
    ['driver.c', driver],
    ['forms.h', forms],
    ['model.h', model],
  ])
    writeFileSync(join(folder, name), text)
  const program = join(folder, 'cvode')
  const compile = (): string | undefined => {
    const { status, stderr, error } = spawnSync(
      'gcc',
      ['-O2', '-o', program, join(folder, 'driver.c'), ...libraries],
      { encoding: 'utf8' },
    )
    if (error) return 'gcc is not installed'
    return status === 0 ? undefined : (stderr.split('\n').find((line) => line.includes('error')) ?? stderr)
  }
  let missing = compile()
  if (missing !== undefined && process.getuid?.() === 0) {
    spawnSync('apt-get', ['install', '-y', 'gcc', 'libsundials-dev'], { stdio: 'ignore' })
    missing = compile()
  }
  if (missing !== undefined) {
    remove()
    return {
      missing: `CVODE could not be compiled (${missing.trim()}). On Debian: apt-get install gcc libsundials-dev.`,
    }
  }
  const run = (tolerance: number, repeats: number): CvodeRun => {
    const { status, stdout, stderr } = spawnSync(program, [String(tolerance), String(repeats)], {
      encoding: 'utf8',
      maxBuffer: 1e8,
    })
    if (status !== 0) throw new Error(`CVODE at ${tolerance} gave up: ${stderr}`)
    const [head, ...rows] = stdout.trim().split('\n')
    const [seconds, steps, evaluations] = head.split(' ').map(Number)
    return {
      seconds,
      steps,
      evaluations,
      samples: rows.map((row) => Float64Array.from(row.split(' '), Number)),
    }
  }
  return { run, remove }
}
