import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { build } from 'vite'
import { plugins } from '../../../../vite.shared.ts'

/** The root of the project. */
export const root = join(import.meta.dirname, '..', '..', '..', '..')
const folder = join(root, '.build', 'cli-under-test')

/** Builds the command line as it ships, apart from the build in dist. @returns the program's file */
export async function buildCli(): Promise<string> {
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    plugins: plugins(),
    publicDir: false,
    ssr: { noExternal: [/^@holdfast\//] },
    build: {
      ssr: join(root, 'apps/cli/src/main.ts'),
      target: 'node20.19',
      outDir: folder,
      rolldownOptions: { output: { entryFileNames: 'holdfast.mjs' }, checks: { bundlerTimings: false } },
    },
  })
  return join(folder, 'holdfast.mjs')
}

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
