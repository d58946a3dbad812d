import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { expect, it } from 'vitest'
import { tree } from './checks/testing/tree.mjs'
import { root } from './root.mjs'

/** A program, and one that becomes it. @returns the path of the second */
function parentOf(program: string): string {
  const child = pathToFileURL(join(root, 'scripts', 'child.mjs')).href
  const folder = tree({
    'program.mjs': program,
    'parent.mjs': `import { becomeChild } from '${child}'
      becomeChild([new URL('./program.mjs', import.meta.url).pathname.replace(/^\\/(\\w:)/, '$1'), 'word'])`,
  })
  return join(folder, 'parent.mjs')
}

it('ends with the exit code of the program, which got the words', () => {
  const parent = parentOf(`process.exit(process.argv[2] === 'word' ? 3 : 4)`)
  expect(spawnSync(process.execPath, [parent]).status).toBe(3)
})

// Windows has no signals: there a program is ended without being asked.
it.skipIf(process.platform === 'win32').each(['SIGTERM', 'SIGINT'] as const)(
  'passes %s on, and waits for the clean end',
  async (signal) => {
    const parent = spawn(
      process.execPath,
      [
        parentOf(`const waiting = setInterval(() => {}, 1000)
          process.once('${signal}', () => { clearInterval(waiting); process.exitCode = 7 })
          console.log('ready')`),
      ],
      { stdio: ['ignore', 'pipe', 'inherit'] },
    )
    await once(parent.stdout, 'data')
    parent.kill(signal)
    expect(await once(parent, 'exit')).toEqual([7, null])
  },
)
