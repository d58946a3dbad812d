import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/**
 * Opens a page in Firefox as it is installed, which playwright-core cannot drive, and closes it when the work is
 * done. The page has to send home by itself what came of it.
 */
export async function inFirefox<T>(
  program: string,
  work: (open: (address: string) => Promise<unknown>) => Promise<T>,
): Promise<T> {
  const profile = await mkdtemp(join(tmpdir(), 'holdfast-firefox-'))
  let ended: Promise<unknown> = Promise.resolve()
  let kill = (): void => undefined
  try {
    return await work(async (address) => {
      const firefox = spawn(program, ['--headless', '--no-remote', '--profile', profile, address], {
        stdio: 'ignore',
        detached: true,
      })
      ended = once(firefox, 'exit')
      kill = () => {
        if (firefox.pid !== undefined && firefox.exitCode === null) process.kill(-firefox.pid, 'SIGTERM')
      }
      await once(firefox, 'spawn')
    })
  } finally {
    kill()
    await ended
    await rm(profile, { recursive: true, force: true, maxRetries: 5 })
  }
}
