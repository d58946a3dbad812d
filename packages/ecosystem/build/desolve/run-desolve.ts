import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Model } from '../../src/assemble/model.ts'
import type { ExportedRun } from '../c-source.ts'
import type { Missing } from '../cvode/compile-c.ts'
import type { ScriptedRun } from '../scipy/run-scipy.ts'
import { numbersOf, scriptedSource } from '../scripted-source.ts'
import forms from './forms.R?raw'
import integrate from './integrate.R?raw'
import { inR, r } from './r.ts'

export interface DesolveOptions {
  /** A method of `deSolve::ode`. */
  readonly method: 'lsoda' | 'adams' | 'bdf'
  readonly tolerance: number
}

/** Solves the equations with deSolve and a right-hand side in R. As root it tries to install what is missing. */
export function desolveRun(
  model: Model,
  exported: ExportedRun,
  options: DesolveOptions,
): ScriptedRun | Missing {
  const missing = missingDesolve()
  if (missing) return missing
  const folder = mkdtempSync(join(tmpdir(), 'holdfast-desolve-'))
  try {
    for (const [name, text] of [
      ['forms.R', forms],
      ['integrate.R', integrate],
      ['model.R', scriptedSource(model, r)],
      ['numbers.R', `run = ${inR(numbersOf(model, exported))}\n`],
    ])
      writeFileSync(join(folder, name), text)
    const words = ['integrate.R', options.method, String(options.tolerance)]
    const { status, stdout, stderr } = spawnSync('Rscript', words, {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: 1e9,
    })
    if (status !== 0) throw new Error(`deSolve gave up: ${stderr}`)
    const [[seconds, evaluations], ...samples] = stdout
      .trim()
      .split('\n')
      .map((line) => line.trim().split(/\s+/).map(Number))
    return { seconds, evaluations, samples: samples.map((sample) => Float64Array.from(sample)) }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Why deSolve cannot be asked; as root it tries to install it first. */
function missingDesolve(): Missing | undefined {
  const there = (): boolean => spawnSync('Rscript', ['-e', 'library(deSolve)']).status === 0
  if (there()) return undefined
  if (process.getuid?.() === 0)
    spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'r-cran-desolve'], { stdio: 'ignore' })
  return there() ? undefined : { missing: 'R has no deSolve. On Debian: apt-get install r-cran-desolve.' }
}
