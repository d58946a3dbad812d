import { spawnSync } from 'node:child_process'
import compare from './compare.py?raw'

/** A point at which both are asked. */
export interface Point {
  readonly S: number
  /** °C. */
  readonly t: number
  /** dbar. */
  readonly p: number
  /** mS/cm. */
  readonly C: number
}

export interface GswAnswers {
  readonly version: string
  readonly answers: Readonly<Record<string, readonly number[]>>
}

/** Where a distribution puts its Python; the first on the path may be another without its packages. */
const pythons = ['python3', '/usr/bin/python3']

/**
 * Asks the TEOS-10 library for Python, as a distribution carries it. As root it tries to install it with
 * apt-get where it is missing.
 *
 * @returns the answers, or in a sentence why there are none
 */
export function askGsw(points: readonly Point[]): GswAnswers | { readonly missing: string } {
  let python = pythonWithGsw()
  if (python === undefined && process.getuid?.() === 0) {
    spawnSync('apt-get', ['install', '-y', 'python3-gsw'], { stdio: 'ignore' })
    python = pythonWithGsw()
  }
  if (python === undefined)
    return { missing: 'no Python here has the module gsw; on Debian: apt-get install python3-gsw' }
  const { status, stdout, stderr } = spawnSync(python, ['-c', compare], {
    input: JSON.stringify(points),
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  })
  if (status !== 0) throw new Error(`GSW failed: ${stderr.trim().split('\n').at(-1)}`)
  return JSON.parse(stdout) as GswAnswers
}

function pythonWithGsw(): string | undefined {
  return pythons.find((python) => spawnSync(python, ['-c', 'import gsw'], { stdio: 'ignore' }).status === 0)
}
