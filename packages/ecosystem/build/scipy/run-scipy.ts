import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Model } from '../../src/assemble/model.ts'
import type { ExportedRun } from '../c-source.ts'
import type { Missing } from '../cvode/compile-c.ts'
import { numbersOf, scriptedSource } from '../scripted-source.ts'
import forms from './forms.py?raw'
import integrate from './integrate.py?raw'
import { python } from './python.ts'

export interface ScriptedRun {
  /** s of the processor for the run, without the start of the language. */
  readonly seconds: number
  readonly evaluations: number
  readonly samples: readonly Float64Array[]
}

export interface ScipyOptions {
  /** A method of `scipy.integrate.solve_ivp`. */
  readonly method: 'RK23' | 'RK45' | 'LSODA' | 'BDF' | 'DOP853'
  readonly tolerance: number
}

/** Solves the equations with SciPy and a right-hand side in NumPy. As root it tries to install what is missing. */
export function scipyRun(model: Model, exported: ExportedRun, options: ScipyOptions): ScriptedRun | Missing {
  const missing = missingScipy()
  if (missing) return missing
  const folder = mkdtempSync(join(tmpdir(), 'holdfast-scipy-'))
  try {
    for (const [name, text] of [
      ['forms.py', forms],
      ['integrate.py', integrate],
      ['model.py', scriptedSource(model, python)],
      ['numbers.json', JSON.stringify(numbersOf(model, exported))],
    ])
      writeFileSync(join(folder, name), text)
    const words = ['integrate.py', options.method, String(options.tolerance)]
    const { status, stdout, stderr } = spawnSync('python3', words, {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: 1e9,
    })
    if (status !== 0) throw new Error(`SciPy gave up: ${stderr}`)
    const { seconds, evaluations, samples } = JSON.parse(stdout) as {
      seconds: number
      evaluations: number
      samples: number[][]
    }
    return { seconds, evaluations, samples: samples.map((sample) => Float64Array.from(sample)) }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Why SciPy cannot be asked; as root it tries to install it first. */
export function missingScipy(): Missing | undefined {
  const there = (): boolean => spawnSync('python3', ['-c', 'import scipy.integrate']).status === 0
  if (there()) return undefined
  if (process.getuid?.() === 0) spawnSync('apt-get', ['install', '-y', 'python3-scipy'], { stdio: 'ignore' })
  return there() ? undefined : { missing: 'Python has no SciPy. On Debian: apt-get install python3-scipy.' }
}
