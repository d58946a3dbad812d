import { type ChildProcess, spawn } from 'node:child_process'
import { onTestFinished } from 'vitest'

/** A server process and what it has said so far. */
export interface Child {
  readonly child: ChildProcess
  readonly said: { out: string; err: string }
  /** The address it printed; rejects when it ends without one. */
  readonly address: Promise<string>
  /** Exit code and signal. */
  readonly ended: Promise<readonly [number | null, NodeJS.Signals | null]>
}

/**
 * Starts a built server, which is gone when the test has ended.
 *
 * @param program  its file
 * @param folder   where the log lives
 */
export function startedServer(
  program: string,
  folder: string,
  env: Readonly<Record<string, string>> = { PORT: '0' },
): Child {
  const child = spawn(process.execPath, [program], {
    env: { PATH: process.env.PATH, HOLDFAST_NO_BROWSER: '1', HOLDFAST_DATA: folder, ...env },
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
  onTestFinished(async () => {
    child.kill('SIGKILL')
    await ended
  })
  return { child, said, address, ended }
}
