import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** A compiled program in a folder of its own. */
export interface Program {
  /** Its lines of output, as words. @throws where it gave up, with what it said */
  readonly run: (words: readonly string[]) => readonly (readonly string[])[]
  readonly remove: () => void
}

/** Why there is none, in a sentence. */
export interface Missing {
  readonly missing: string
}

const packages = ['gcc', 'libsundials-dev', 'libsuitesparse-dev']

/**
 * Compiles C with the SUNDIALS and SuiteSparse libraries, as a distribution carries them. As root it tries to
 * install what is missing, with apt-get.
 *
 * @param files  their texts by name; the first is compiled
 */
export function compileC(
  files: Readonly<Record<string, string>>,
  flags: readonly string[],
): Program | Missing {
  const folder = mkdtempSync(join(tmpdir(), 'holdfast-c-'))
  const remove = (): void => rmSync(folder, { recursive: true, force: true })
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text)
  const [first] = Object.keys(files)
  const program = join(folder, 'program')
  const compile = (): string | undefined => {
    const { status, stderr, error } = spawnSync(
      'gcc',
      ['-O3', '-march=native', '-I/usr/include/suitesparse', '-o', program, join(folder, first), ...flags],
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
      missing: `${first} could not be compiled (${missing.trim()}). On Debian: apt-get install ${packages.join(' ')}.`,
    }
  }
  const run: Program['run'] = (words) => {
    const { status, stdout, stderr } = spawnSync(program, words, { encoding: 'utf8', maxBuffer: 1e9 })
    if (status !== 0) throw new Error(`${first} ${words.join(' ')} gave up: ${stderr.trim()}`)
    return stdout
      .trim()
      .split('\n')
      .map((line) => line.trim().split(' '))
  }
  return { run, remove }
}
