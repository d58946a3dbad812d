import { existsSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { join } from 'node:path'
import { openLogbook } from '@holdfast/logbook/sqlite'
import { postgresBinaries } from '@holdfast/logbook/testing/postgres-binaries.ts'
import { postgresServer } from '@holdfast/logbook/testing/postgres-server.ts'
import { buildProgram, type Child, startedServer, temporaryFolder } from '@holdfast/testing'
import { beforeAll, expect, onTestFinished, test, vi } from 'vitest'
import { putExamplesIn } from './example.ts'
import { browserCommand } from './open-browser.ts'
import { smallExample } from './testing/small-example.ts'

// A busy machine starts a process slowly.
vi.setConfig({ testTimeout: 60_000 })

let program = ''
beforeAll(async () => {
  program = await buildProgram('apps/server/src/main.ts', 'server-start')
}, 60_000)

const started = (folder: string, env?: Readonly<Record<string, string>>): Child =>
  startedServer(program, folder, env)

/** Holds a port of this machine until the test has ended. */
async function takenPort(): Promise<number> {
  const holder = createServer()
  await new Promise<void>((resolve) => holder.listen(0, '127.0.0.1', resolve))
  onTestFinished(() => void holder.close())
  const address = holder.address()
  if (typeof address !== 'object' || address === null) throw new Error('no port')
  return address.port
}

test('a start prints its address and where the log lives, and answers on this machine', async () => {
  const folder = temporaryFolder()
  const { address, said } = started(folder)
  const url = await address
  await expect
    .poll(() => said.out)
    .toBe(`${url}\nYour log is kept on this machine, in ${join(folder, 'holdfast.db')}.\n`)
  const health = await (await fetch(`${url}/api/health`)).json()
  expect(health).toMatchObject({ program: 'holdfast', status: 'ok' })
  expect(said.err).toBe('')
})

test.each(['SIGTERM', 'SIGINT'] as const)(
  '%s ends it cleanly, with its mark taken away and the log whole',
  async (signal) => {
    const folder = temporaryFolder()
    const { address, child, ended } = started(folder)
    // A connection that is kept open must not hold the end up.
    await (await fetch(`${await address}/api/systems`)).json()
    expect(existsSync(join(folder, 'running.json'))).toBe(true)
    child.kill(signal)
    expect(await ended).toEqual([0, null])
    expect(existsSync(join(folder, 'running.json'))).toBe(false)
    // The journal is folded into the file when the last connection is gone.
    expect(existsSync(join(folder, 'holdfast.db-wal'))).toBe(false)
  },
)

test('where the port is taken, the next free one is used', async () => {
  const port = await takenPort()
  const { address } = started(temporaryFolder(), { PORT: String(port) })
  const used = Number(new URL(await address).port)
  expect(used).toBeGreaterThan(port)
  expect(used).toBeLessThanOrEqual(port + 20)
})

test('a second start on the same folder gives the address of the first and ends', async () => {
  const folder = temporaryFolder()
  const first = started(folder)
  const url = await first.address
  const second = started(folder)
  expect(await second.address).toBe(url)
  expect(await second.ended).toEqual([0, null])
  expect((await fetch(`${url}/api/health`)).status).toBe(200)
})

test('a mark left by a server that was cut off does not keep the next one from starting', async () => {
  const folder = temporaryFolder()
  const first = started(folder)
  await first.address
  first.child.kill('SIGKILL')
  await first.ended
  expect(existsSync(join(folder, 'running.json'))).toBe(true)
  const next = started(folder)
  expect((await fetch(`${await next.address}/api/health`)).status).toBe(200)
})

test('a mark whose port another server took meanwhile does not lead to that one', async () => {
  const other = await started(temporaryFolder()).address
  const folder = temporaryFolder()
  const left = { start: 'one that was cut off', pid: 1, port: Number(new URL(other).port) }
  writeFileSync(join(folder, 'running.json'), JSON.stringify(left))
  expect(await started(folder).address).not.toBe(other)
})

test('a damaged log, a folder that takes no log and a port that is none are said in words', async () => {
  const damaged = temporaryFolder()
  writeFileSync(join(damaged, 'holdfast.db'), 'no database at all, '.repeat(500))
  const below = join(damaged, 'holdfast.db', 'below')
  const cases = [
    {
      server: started(damaged),
      words: /^Log .*holdfast\.db: it is damaged or no log .*There is no whole backup/,
    },
    { server: started(below), words: /^Data folder .*: the log cannot be written there/ },
    { server: started(temporaryFolder(), { PORT: 'x' }), words: /^PORT: "x" is no port\. Give a whole/ },
  ]
  for (const { server, words } of cases) {
    expect(await server.ended).toEqual([1, null])
    expect(server.said).toEqual({ out: '', err: expect.stringMatching(words) })
    expect(server.said.err).not.toMatch(/\n\s+at /)
  }
})

test('the log can be written by another program while the server runs, and the page sees it', async () => {
  const folder = temporaryFolder()
  const url = await started(folder).address
  const opened = openLogbook({ folder })
  expect(opened.ok).toBe(true)
  if (!opened.ok) return
  await putExamplesIn(opened.logbook, [smallExample()], new Date())
  await opened.logbook.close()
  expect(await (await fetch(`${url}/api/systems`)).json()).toEqual([
    { id: 'example-reef', name: 'Example reef' },
  ])
})

const binaries = postgresBinaries()
test.skipIf(binaries === undefined)('two starts on one database server share its log', async () => {
  const databases = await postgresServer(binaries ?? '')
  onTestFinished(() => databases.remove())
  const env = { PORT: '0', DATABASE_URL: await databases.newDatabase() }
  const folder = join(temporaryFolder(), 'not there')
  const [first, second] = [started(folder, env), started(folder, env)]
  const urls = await Promise.all([first.address, second.address])
  expect(new Set(urls).size).toBe(2)
  await expect.poll(() => first.said.out).toContain('Your log is kept on the database server, ')
  expect(existsSync(folder)).toBe(false)
  const systems = urls.map(async (url) => (await fetch(`${url}/api/systems`)).json())
  const [ofFirst, ofSecond] = await Promise.all(systems)
  expect(ofSecond).toEqual(ofFirst)
})

test('a browser is opened only where there may be one and none forbade it', () => {
  expect(browserCommand('linux', {})).toBeUndefined()
  expect(browserCommand('linux', { DISPLAY: ':0' })).toEqual(['xdg-open'])
  expect(browserCommand('linux', { DISPLAY: ':0', CI: 'true' })).toBeUndefined()
  expect(browserCommand('darwin', { HOLDFAST_NO_BROWSER: '1' })).toBeUndefined()
  expect(browserCommand('darwin', {})).toEqual(['open'])
  expect(browserCommand('win32', {})).toEqual(['rundll32', 'url.dll,FileProtocolHandler'])
})
