import { spawn } from 'node:child_process'

/** What a run of the program came to. */
export interface Ran {
  readonly code: number | null
  readonly signal: NodeJS.Signals | null
  readonly out: string
  readonly err: string
}

/**
 * Runs the program with nobody at its input.
 *
 * @param stopAfter  sends SIGINT when the standard error says this
 */
export function runCli(
  program: string,
  args: readonly string[],
  data: string,
  stopAfter?: RegExp,
): Promise<Ran> {
  const child = spawn(process.execPath, [program, ...args], {
    env: { PATH: process.env.PATH, HOLDFAST_DATA: data },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let [out, err] = ['', '']
  child.stdout.on('data', (part) => {
    out += part
  })
  child.stderr.on('data', (part) => {
    err += part
    if (stopAfter?.test(err)) child.kill('SIGINT')
  })
  return new Promise((resolve) => child.on('close', (code, signal) => resolve({ code, signal, out, err })))
}
