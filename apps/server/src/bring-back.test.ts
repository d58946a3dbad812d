import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { backUp } from '@holdfast/logbook/copies'
import { temporaryFolder } from '@holdfast/testing'
import { expect, onTestFinished, test } from 'vitest'
import { start } from './start.ts'
import { smallExample } from './testing/small-example.ts'

/** Starts on a data folder in this process; what it said, and its address where it runs. */
async function started(folder: string, restore = false) {
  const said: string[] = []
  const say = (line: string): void => void said.push(line)
  const { exitCode, stop } = await start({
    folder,
    restore,
    platform: 'linux',
    home: folder,
    env: { PORT: '0', HOLDFAST_NO_BROWSER: '1' },
    webFolder: folder,
    exampleFolders: [smallExample()],
    print: say,
    complain: say,
  })
  onTestFinished(() => stop?.())
  return { exitCode, said, stop, address: said.find((line) => line.startsWith('http://')) ?? '' }
}

const namesIn = async (address: string): Promise<unknown> => (await fetch(`${address}/api/systems`)).json()

test('a damaged log names the last whole backup, and one start brings it back', async () => {
  const folder = temporaryFolder()
  const first = await started(folder)
  const before = await namesIn(first.address)
  const to = join(folder, 'backups')
  const whole = await backUp({ folder, to, now: new Date('2026-02-01T08:00:00Z'), made: 'daily' })
  const cut = await backUp({ folder, to, now: new Date('2026-02-02T08:00:00Z'), made: 'daily' })
  writeFileSync(join(cut.folder, 'holdfast.db'), 'cut off')
  await first.stop?.()
  writeFileSync(join(folder, 'holdfast.db'), 'no log at all, '.repeat(500))

  const refused = await started(folder)
  expect(refused.exitCode).toBe(1)
  expect(refused.said).toEqual([
    expect.stringContaining(
      `The last whole backup is of 2026-02-01 08:00 UTC, with ${whole.manifest.entries} entries. "npm start -- --data "${folder}" --restore" brings it back`,
    ),
  ])

  const back = await started(folder, true)
  expect(back.said[0]).toContain(`Restored ${whole.manifest.entries} entries from ${whole.folder}.`)
  expect(await namesIn(back.address)).toEqual(before)
  const [damaged] = readdirSync(folder).filter((name) => /before-restore.*\.db$/.test(name))
  expect(readFileSync(join(folder, damaged), 'utf8')).toMatch(/^no log at all/)
})

test('without a backup a restoring start says so and changes nothing', async () => {
  const folder = temporaryFolder()
  const { exitCode, said } = await started(folder, true)
  expect([exitCode, said]).toEqual([1, [expect.stringContaining('there is no whole one in')]])
  expect(readdirSync(folder)).toEqual([])
})
