import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildProgram, temporaryFolder } from '@holdfast/testing'
import { beforeAll, expect, test, vi } from 'vitest'
import { type Ran, runCli } from './testing/run-cli.ts'
import { systemFile } from './testing/small-reef.ts'

// Each command is a process of its own, which a busy machine starts slowly.
vi.setConfig({ testTimeout: 60_000 })

let program = ''
beforeAll(async () => {
  program = await buildProgram('apps/cli/src/main.ts', 'cli-backup')
}, 60_000)

const run = (data: string, ...args: readonly string[]): Promise<Ran> => runCli(program, args, data)
const json = ({ out }: Ran) => JSON.parse(out)

/** A data folder with the reef in the hall. */
async function withHall(): Promise<string> {
  const data = temporaryFolder()
  expect(await run(data, 'system', 'add', systemFile(), '--from', '2026-01-01')).toMatchObject({ code: 0 })
  return data
}

const describedAnew = (data: string): Promise<Ran> =>
  run(data, 'system', 'add', systemFile(), '--from', '2026-02-01')

const entriesIn = async (data: string): Promise<number> =>
  json(await run(data, 'system', 'list', '--json'))[0].entries

test('what was backed up comes back by one command, and that can be undone by one', async () => {
  const data = await withHall()
  const { backup } = json(await run(data, 'backup', '--json'))
  expect(backup).toContain(join(data, 'backups', 'holdfast-'))
  await describedAnew(data)
  expect(await entriesIn(data)).toBe(2)

  const { kept } = json(await run(data, 'restore', backup, '--json'))
  expect(await entriesIn(data)).toBe(1)
  expect(await run(data, 'restore', kept)).toMatchObject({ code: 0, err: '' })
  expect(await entriesIn(data)).toBe(2)
})

test('a damaged log names the command that brings the last whole backup back', async () => {
  const data = await withHall()
  await run(data, 'backup')
  writeFileSync(join(data, 'holdfast.db'), 'no log, '.repeat(1000))
  const refused = await run(data, 'system', 'list')
  expect(refused.code).toBe(1)
  expect(refused.err).toMatch(/The last whole backup is of .* "holdfast restore --last" brings it back/)
  expect(await run(data, 'restore', '--last')).toMatchObject({
    code: 0,
    out: expect.stringContaining('Restored 1 entries'),
  })
  expect(await entriesIn(data)).toBe(1)
})

test('restore alone lists the backups and says which are whole', async () => {
  const data = await withHall()
  expect((await run(data, 'restore')).out).toContain('There is no backup in')
  const { backup } = json(await run(data, 'backup', '--json'))
  await run(data, 'backup', '--to', join(data, 'backups'))
  writeFileSync(join(backup, 'holdfast.db'), 'cut')
  expect(json(await run(data, 'restore', '--json')).map(({ whole }: { whole: boolean }) => whole)).toEqual([
    false,
    true,
  ])
  expect(await run(data, 'restore', backup)).toMatchObject({
    code: 1,
    err: expect.stringContaining('holdfast.db has 3 bytes instead of'),
  })
})
