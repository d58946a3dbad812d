import { spawnSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { hall } from '@holdfast/logbook/testing/hall.ts'
import { buildProgram, root, temporaryFolder } from '@holdfast/testing'
import { zipSync } from 'fflate'
import { beforeAll, expect, test, vi } from 'vitest'
import { type Ran, runCli } from './testing/run-cli.ts'
import { fileWith, systemFile } from './testing/small-reef.ts'

// Each command is a process of its own, which a busy machine starts slowly.
vi.setConfig({ testTimeout: 60_000 })

let program = ''
beforeAll(async () => {
  program = await buildProgram('apps/cli/src/main.ts', 'cli-import')
}, 60_000)

const sheet = (name: string): string => join(root, 'validation', 'spreadsheets', name)

async function withHall(): Promise<(...args: readonly string[]) => Promise<Ran>> {
  const data = temporaryFolder()
  await runCli(program, ['system', 'add', systemFile(), '--from', '2025-01-01'], data)
  return (...args) => runCli(program, args, data)
}

test('a workbook of two tanks waits until each tank is a system or none', async () => {
  const run = await withHall()
  const file = sheet('12-two-tanks-merged-headers.xlsx')
  const open = await run('import', file, '--yes')
  expect(open.code).toBe(2)
  expect(open.out).toContain('--tank "Frag tank=SYSTEM"')
  const id = JSON.parse((await run('system', 'list', '--json')).out)[0].id
  const tanks = ['--tank', `Display=${id}`, '--tank', 'Frag tank=none']
  const stored = await run('import', file, '--yes', ...tanks)
  expect(stored).toMatchObject({ code: 0, out: expect.stringContaining('47 new, 0 already in the log') })
  const again = await run('import', file, '--yes')
  expect(again).toMatchObject({ code: 0, out: expect.stringContaining('0 new, 47 already in the log') })
})

test('the undo of a sheet of two tanks takes back what it brought to both', async () => {
  const data = temporaryFolder()
  for (const file of [systemFile(), systemFile({ id: 'annex', name: 'Annex' })])
    await runCli(program, ['system', 'add', file, '--from', '2025-01-01'], data)
  const tanks = ['--tank', `Display=${hall.id}`, '--tank', 'Frag tank=annex']
  const file = sheet('12-two-tanks-merged-headers.xlsx')
  const stored = await runCli(program, ['import', file, '--yes', '--json', ...tanks], data)
  const undone = await runCli(program, ['undo-import', JSON.parse(stored.out).batch, '--json'], data)
  const listed = await runCli(program, ['system', 'list', '--json'], data)
  expect(JSON.parse(listed.out).map(({ entries }: { entries: number }) => entries)).toEqual([1, 1])
  expect(JSON.parse(undone.out).taken_back).toBeGreaterThan(JSON.parse(stored.out).new / 2)
})

test('answers hold again for the next sheet with the same headings, until the import is undone', async () => {
  const run = await withHall()
  const [january, february, march] = ['2026-01-04,5\n', '2026-02-01,6\n', '2026-03-01,7\n'].map((row, at) =>
    fileWith(`log-${at}.csv`, `Date,Nitrate (mg/L)\n${row}`),
  )
  if (january === undefined || february === undefined || march === undefined) throw new Error('no file')
  const first = await run('import', january, '--yes', '--answer', 'nitrate-form:B=N', '--json')
  const second = await run('import', february, '--yes')
  expect(second.code).toBe(0)
  expect(second.out).toContain('Answered as for the last sheet with these headings: nitrate-form:B=N')
  const batchOf = (ran: Ran): string => JSON.parse(ran.out).batch
  const third = await run('import', march, '--yes', '--json')
  expect(JSON.parse(third.out).outcome).toBe('stored')
  const secondBatch = /undo-import (\S+)/.exec(second.out)?.[1] ?? ''
  for (const batch of [batchOf(first), secondBatch, batchOf(third)]) await run('undo-import', batch)
  expect(JSON.parse((await run('import', march, '--json')).out).outcome).toBe('question open')
})

test('what is pasted is read as a file is, and the preview says what would be stored', () => {
  const data = temporaryFolder()
  const env = { PATH: process.env.PATH, HOLDFAST_DATA: data }
  const from = ['--from', '2025-01-01']
  spawnSync(process.execPath, [program, 'system', 'add', systemFile(), ...from], { env })
  const input = 'Date\tKH (dKH)\n2026-03-01\t8,2\n'
  const ran = spawnSync(process.execPath, [program, 'import', '-', '--preview'], {
    env,
    input,
    encoding: 'utf8',
  })
  expect(ran.status).toBe(0)
  expect(ran.stdout).toContain('Sheet "pasted text": UTF-8, tabs between fields, decimal comma')
  expect(ran.stdout).toMatch(/^2026-03-01 +Alkalinity 8,2 dKH$/m)
})

test('a workbook that would unpack to a bomb is refused in words, and nothing is stored', async () => {
  const run = await withHall()
  const bomb = fileWith('bomb.xlsx', '')
  writeFileSync(bomb, zipSync({ 'xl/workbook.xml': new Uint8Array(30_000_000).fill(32) }))
  const refused = await run('import', bomb, '--yes')
  expect(refused.code).toBe(1)
  expect(refused.err).toContain('Sheet "bomb.xlsx": the workbook cannot be read')
  expect(refused.err).toContain('Nothing is stored.')
})

test('two machines of other languages and zones take the same file for the same entries', async () => {
  const data = temporaryFolder()
  await runCli(program, ['system', 'add', systemFile(), '--from', '2025-01-01'], data)
  const rows = [
    '3/4/26 0:00,8.1,"1,310"',
    '3/5/26 23:59,8.2,1305',
    '3/29/26 2:30,8.3,1300',
    '4/1/26 0:00,8.2,1290',
  ]
  const file = fileWith('log.csv', ['Date,KH (dKH),Mg (mg/L)', ...rows].join('\n'))
  const undecided = fileWith('open.csv', 'Date,KH (dKH)\n3/4/26,8.1\n')
  const said = [
    { LC_ALL: 'en_US.UTF-8', LANG: 'en_US.UTF-8', TZ: 'America/Los_Angeles' },
    { LC_ALL: 'de_DE.UTF-8', LANG: 'de_DE.UTF-8', TZ: 'Pacific/Auckland' },
  ].map((machine) => {
    const env = { PATH: process.env.PATH, HOLDFAST_DATA: data, ...machine }
    const of = (path: string) =>
      JSON.parse(
        spawnSync(process.execPath, [program, 'import', path, '--preview', '--json'], {
          env,
          encoding: 'utf8',
        }).stdout,
      )
    return { decided: of(file), open: of(undecided) }
  })
  const [here, there] = said
  expect(there).toEqual(here)
  expect(here?.decided.entries.map(({ at }: { readonly at: string }) => at.slice(0, 16))).toEqual(
    ['2026-03-04T00:00', '2026-03-05T23:59', '2026-03-29T03:30', '2026-04-01T00:00'].flatMap((at) => [
      at,
      at,
    ]),
  )
  expect(here?.decided.entries[1].body).toMatchObject({ quantity: 'magnesium', value: 1310 })
  expect(here?.open.questions).toMatchObject([{ topic: 'date-order', waiting: 1 }])
})

test.each(['csv', 'xlsx'])(
  'what a sheet brought in goes out as %s and comes back as it was',
  async (ending) => {
    const [run, there] = [await withHall(), temporaryFolder()]
    await run(
      'import',
      sheet('12-two-tanks-merged-headers.xlsx'),
      '--yes',
      '--tank',
      `Display=${hall.id}`,
      '--tank',
      'Frag tank=none',
    )
    const folder = temporaryFolder()
    const [log, before, after] = [`log.${ending}`, 'before.json', 'after.json'].map((name) =>
      join(folder, name),
    )
    if (log === undefined || before === undefined || after === undefined) throw new Error('no file')
    await run('export', log)
    await run('export', before)
    expect(await runCli(program, ['import', log, '--yes'], there)).toMatchObject({ code: 0 })
    await runCli(program, ['export', after], there)
    const [left, came] = [before, after].map((file) => JSON.parse(readFileSync(file, 'utf8')).entries)
    expect(left.length).toBeGreaterThan(40)
    expect(came).toEqual(left)
  },
)
