import { buildProgram, startedServer, temporaryFolder } from '@holdfast/testing'
import { beforeAll, describe, expect, test, vi } from 'vitest'
import type { Ran } from './testing/run-cli.ts'
import { runHere } from './testing/run-here.ts'
import { systemFile } from './testing/small-reef.ts'

// A busy machine starts the server slowly.
vi.setConfig({ testTimeout: 60_000 })

let server = ''
beforeAll(async () => {
  server = await buildProgram('apps/server/src/main.ts', 'cli-log')
}, 60_000)

type Run = (...args: readonly string[]) => ReturnType<typeof runHere>

const places: readonly (readonly [string, () => Promise<Run>])[] = [
  ['in a folder', async () => running(await withHall())],
  [
    'behind a server',
    async () => {
      const data = await withHall()
      const address = await startedServer(server, data).address
      // With an empty folder of its own, so that nothing can come from there.
      return running(temporaryFolder(), '--server', address)
    },
  ],
]

async function withHall(): Promise<string> {
  const data = temporaryFolder()
  const added = await runHere(['system', 'add', systemFile(), '--from', '2026-01-01'], data)
  expect(added).toMatchObject({ code: 0, err: '' })
  return data
}

const running =
  (data: string, ...where: readonly string[]): Run =>
  (...args) =>
    runHere(['log', ...args, ...where], data)

const json = ({ out }: Pick<Ran, 'out'>) => JSON.parse(out)

async function states(run: Run, ...question: readonly string[]): Promise<readonly string[]> {
  const { lines } = json(await run('list', '--json', ...question))
  return lines
    .filter(({ entry }: LineJson) => entry.kind !== 'system')
    .map(({ entry, state, says }: LineJson) => `${entry.at} ${says}: ${state}`)
}

interface LineJson {
  readonly entry: { readonly kind: string; readonly at: string }
  readonly state: string
  readonly says: string
}

describe.each(places)('a log %s', (_, open) => {
  test('takes a reading, its correction, its undo and its return', async () => {
    const run = await open()
    const at = ['--at', '2026-03-01T08:10']
    const logged = json(await run('reading', 'nitrate', '5 mg/L NO3', '--kit', 'colour kit', ...at, '--json'))
    expect(logged).toMatchObject({
      system: 'hall',
      kind: 'reading',
      at: '2026-03-01T08:10+01:00[Europe/Berlin]',
    })
    expect(logged.says).toContain('5 mg/L NO3')
    expect(logged.says).toContain('colour kit')

    const mended = json(await run('correct', logged.id, '--set', 'value=6 mg/L NO3', '--json'))
    expect(mended).toMatchObject({
      at: logged.at,
      replaces: logged.id,
      says: expect.stringContaining('6 mg/L'),
    })
    expect(mended.says).toContain('colour kit')
    expect(await states(run)).toEqual([
      `${logged.at} ${mended.says}: holds`,
      `${logged.at} ${logged.says}: corrected`,
    ])

    expect(await run('undo', mended.id)).toMatchObject({
      code: 0,
      out: expect.stringMatching(/^Taken back: /),
    })
    expect(await states(run)).toEqual([
      `${logged.at} ${mended.says}: taken back`,
      `${logged.at} ${logged.says}: holds`,
    ])
    expect(await run('undo', mended.id)).toMatchObject({
      code: 1,
      err: expect.stringContaining('bring-back'),
    })
    expect(await run('bring-back', mended.id)).toMatchObject({ code: 0, err: '' })
    expect(await states(run)).toEqual([
      `${logged.at} ${mended.says}: holds`,
      `${logged.at} ${logged.says}: corrected`,
    ])
  })

  test('is listed by kind, day and word, in pages', async () => {
    const run = await open()
    for (const [day, words] of [
      ['02', 'calm'],
      ['03', 'calm, snails out'],
      ['04', 'storm'],
    ])
      expect(await run('note', words, '--at', `2026-03-${day}`)).toMatchObject({ code: 0, err: '' })
    expect(await states(run, '--words', 'CALM')).toEqual([
      '2026-03-03 calm, snails out: holds',
      '2026-03-02 calm: holds',
    ])
    expect(await states(run, '--kind', 'reading')).toEqual([])
    expect(await states(run, '--from', '2026-03-04')).toEqual(['2026-03-04 storm: holds'])
    const first = await run('list', '--kind', 'note', '--limit', '2')
    const [, before = ''] = /^There are more: --before (\S+)$/m.exec(first.out) ?? []
    expect(first.out).toMatch(/^2026-03-04 +storm +holds +[0-9a-f-]{36}$/m)
    expect(await states(run, '--kind', 'note', '--limit', '2', '--before', before)).toEqual([
      '2026-03-02 calm: holds',
    ])
  })

  test('refuses what it does not have, in words', async () => {
    const run = await open()
    const id = '018f3a1e-7c00-7000-8000-0000000000ff'
    expect(await run('undo', id)).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringMatching(/^Entry: .*not in this log/),
    })
    const pond = await run('note', 'calm', '--system', 'pond')
    expect(pond).toMatchObject({
      code: 1,
      err: expect.stringMatching(/^System: "pond" is not in this log\. There are: hall\./),
    })
    expect(await states(run)).toEqual([])
  })
})

test('every mistake is said at once, an open question ends with 2, and neither stores anything', async () => {
  const run = running(await withHall())
  const wrong = await run('water-change', '40 foo', '--at', '2026-02-30')
  expect(wrong).toMatchObject({ code: 1, out: '' })
  expect(wrong.err).toContain('"40 foo" has no unit we know')
  expect(wrong.err).toContain('"2026-02-30" is no date of the calendar')
  const open = await run('reading', 'nitrate', '5 mg/L', '--at', '2026-10-25T02:30')
  expect(open).toMatchObject({ code: 2, err: '' })
  expect(open.out).toMatch(/--value "5 mg\/L NO3"/)
  expect(open.out).toMatch(/--at "2026-10-25T02:30\+02:00": before the clocks were put back/)
  const asked = await run('reading', 'nitrate', '5 mg/L', '--json')
  expect([asked.code, json(asked).stored, json(asked).questions[0].blank]).toEqual([2, false, 'value'])
  const more = await run('feeding', '4 g/d', '5 g/d')
  expect(more).toMatchObject({ code: 1, err: expect.stringMatching(/^"5 g\/d": there is no blank left/) })
  expect(await states(run)).toEqual([])
  const answered = await run('reading', 'nitrate', '5 mg/L NO3', '--at', '2026-10-25T02:30+02:00')
  expect(answered).toMatchObject({ code: 0, err: '' })
  expect(answered.out).toMatch(
    /^Logged 2026-10-25 02:30: .*\nTo take it back: holdfast log undo [0-9a-f-]{36}\n$/,
  )
})

test('each kind is logged through its blanks, now where no day is given', async () => {
  const run = running(await withHall())
  const said: readonly (readonly string[])[] = [
    ['feeding', '4 g/d'],
    ['water-change', '40 L', '--nitrate', '2 mg/L NO3', '--phosphate', '0 mg/L PO4'],
    ['dose', 'sodium nitrate', '2 g'],
    ['media', 'placed', 'activated carbon', '--mass', '200 g'],
    ['siphoning', '--part', '30 %'],
    ['animals', 'added', 'Trochus histrio', '3'],
    ['light-change', '--hours', '0 h'],
    ['reading', 'phosphate', '0.03', '--set', 'unit=mg/L PO4'],
    ['note', '--text', 'all well'],
  ]
  for (const args of said) expect(await run(...args), args.join(' ')).toMatchObject({ code: 0, err: '' })
  const { lines } = json(await run('list', '--json'))
  const logged = lines.filter(({ entry }: LineJson) => entry.kind !== 'system')
  expect(logged.map(({ entry }: LineJson) => entry.kind).sort()).toEqual(said.map(([kind]) => kind).sort())
  for (const { entry } of logged)
    expect(entry.at).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d[+-]\d\d:\d\d\[Europe\/Berlin\]$/)
})

test('a server that is not reached, and an address that is none, are said in words', async () => {
  const away = running(temporaryFolder(), '--server', 'http://localhost:9')
  expect(await away('list')).toMatchObject({
    code: 1,
    out: '',
    err: expect.stringMatching(/^Holdfast: it does not answer\./),
  })
  const none = running(temporaryFolder(), '--server', 'localhost:4173')
  expect(await none('list')).toMatchObject({
    code: 1,
    err: expect.stringMatching(/^Server: "localhost:4173" is no address\./),
  })
})
