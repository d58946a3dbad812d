import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'
import { build } from 'vite'
import { plugins } from '../../../../vite.shared.ts'

/** The root of the project. */
const root = join(import.meta.dirname, '..', '..', '..', '..')
const folder = join(root, '.build', 'server-under-test')

/** Builds the server as it ships, apart from the build in dist. @returns the program's file */
export async function buildServer(): Promise<string> {
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    plugins: plugins(),
    publicDir: false,
    ssr: { noExternal: [/^@holdfast\//] },
    build: {
      ssr: join(root, 'apps/server/src/main.ts'),
      target: 'node20.19',
      outDir: folder,
      rolldownOptions: { output: { entryFileNames: 'server.mjs' }, checks: { bundlerTimings: false } },
    },
  })
  return join(folder, 'server.mjs')
}

/** A server process and what it has said so far. */
export interface Child {
  readonly child: ChildProcess
  readonly said: { out: string; err: string }
  /** The address it printed; rejects when it ends without one. */
  readonly address: Promise<string>
  /** Exit code and signal. */
  readonly ended: Promise<readonly [number | null, NodeJS.Signals | null]>
}

export function startServer(program: string, env: Readonly<Record<string, string>>): Child {
  const child = spawn(process.execPath, [program], {
    env: { PATH: process.env.PATH, HOLDFAST_NO_BROWSER: '1', ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const said = { out: '', err: '' }
  child.stderr?.on('data', (part) => {
    said.err += part
  })
  const ended = new Promise<readonly [number | null, NodeJS.Signals | null]>((resolve) =>
    child.on('close', (code, signal) => resolve([code, signal])),
  )
  const address = new Promise<string>((resolve, reject) => {
    child.stdout?.on('data', (part) => {
      said.out += part
      const line = /^http:\/\/localhost:\d+$/m.exec(said.out)
      if (line) resolve(line[0])
    })
    ended.then(() => reject(new Error(`ended without an address: ${said.err}`)))
  })
  // Starts that are meant to fail are looked at by their end.
  address.catch(() => undefined)
  return { child, said, address, ended }
}
