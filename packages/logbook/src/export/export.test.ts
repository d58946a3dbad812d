import { writeFileSync } from 'node:fs'
import Ajv from 'ajv/dist/2020.js'
import fc from 'fast-check'
import Papa from 'papaparse'
import { expect, test } from 'vitest'

import { nitrate } from '../conformance/nitrate.ts'
import { keptLog, opened, photograph, temporaryFolder } from '../copies/testing/kept-log.ts'
import { kinds } from '../entries/index.ts'
import type { Issue } from '../issue.ts'
import type { Kept, Logbook, Sent } from '../logbook.ts'
import { readBook } from '../sheet/book/read-book.ts'
import { exportJsonSchema } from './document.ts'
import { isExport, readExport } from './read-export.ts'
import { wholeHeading } from './table.ts'
import { exported, formats, samples, takenOver } from './testing/there-and-back.ts'

/** The entry with a text wherever a keeper may write one. */
const textsIn = (entry: Sent, text: string): Sent => ({
  ...entry,
  by: text.slice(0, 100) || 'keeper',
  body: { ...entry.body, ...('text' in entry.body && { text }), remark: text },
})

/** Entries of every kind and version there is, with any text in them, in any order, in two systems. */
const anyLog: fc.Arbitrary<readonly Sent[]> = fc
  .uniqueArray(
    fc.record({
      sample: fc.constantFrom(...samples),
      number: fc.nat(999_999),
      system: fc.constantFrom('reef', 'frag tank'),
      text: fc.oneof(
        fc.string({ unit: 'binary' }),
        fc.constantFrom('=1+1', '+49', '-5', '@SUM(A1)', '\t=1', '"; ,', ' \r\n ', '_x0041_', '\u0000\ufffe'),
        fc.constant(' '.repeat(17_000)),
      ),
    }),
    { selector: ({ number }) => number, maxLength: 12 },
  )
  .map((drafts) =>
    drafts.map(({ sample, number, system, text }) => {
      const id = `018f3a1e-7c00-7000-8000-${String(number).padStart(12, '0')}`
      return { ...textsIn(sample, text), id, system }
    }),
  )

test.each(formats)(
  'a log exported as %s is the same log on another machine, to the last entry',
  async (format) => {
    await fc.assert(
      fc.asyncProperty(anyLog, fc.uint8Array({ maxLength: 20_000 }), async (sent, bytes) => {
        const [here, there] = [opened(temporaryFolder()), opened(temporaryFolder())]
        for (const entry of sent) await here.append([entry])
        const { sha256 } = await here.attach(bytes, 'image/png')
        const taken = await takenOver(there, await exported(here, format))
        expect(taken).toMatchObject({ added: sent.map(({ id }) => id), leftOut: [] })
        expect(await there.asSent()).toEqual(await here.asSent())
        expect(await there.read()).toEqual(await here.read())
        expect(await there.attachments()).toEqual(await here.attachments())
        expect((await there.attachment(sha256))?.bytes).toEqual(bytes)
      }),
      { numRuns: 10 },
    )
  },
  60_000,
)

test('every kind of entry is among the samples that go there and back', () => {
  expect(new Set(samples.map(({ kind }) => kind))).toEqual(new Set(kinds.map(({ name }) => name)))
})

test.each(formats)('%s taken over twice changes nothing', async (format) => {
  const { logbook } = await keptLog(3)
  const bytes = await exported(logbook, format)
  const before = await logbook.asSent()
  expect(await takenOver(logbook, bytes)).toMatchObject({ added: [], differing: [] })
  expect(await logbook.asSent()).toEqual(before)
})

test('a log with a million characters in an entry and none at all go there and back', async () => {
  const long = Array.from({ length: 200_000 }, (_, number) => number).join('ä ')
  for (const entries of [[], [nitrate(1, { body: { ...nitrate(1).body, remark: long } })]]) {
    const here = opened(temporaryFolder())
    await here.append(entries)
    for (const format of formats) {
      const there = opened(temporaryFolder())
      await takenOver(there, await exported(here, format))
      expect(await there.asSent()).toEqual(await here.asSent())
    }
  }
})

test('an export goes into the workspace that takes it over', async () => {
  const { logbook } = await keptLog(2)
  const bytes = await exported(logbook, 'json')
  const read = readExport(bytes)
  if (!read.ok) throw new Error('not read')
  expect(read.contents.entries.every(({ workspace }) => workspace === 'home')).toBe(true)
  const club = JSON.stringify(JSON.parse(bytes.toString()), (key, value) =>
    key === 'workspace' ? 'club' : value,
  )
  const there = opened(temporaryFolder())
  await takenOver(there, Buffer.from(club))
  expect(await there.asSent()).toEqual(await logbook.asSent())
})

test('a reading keeps what was typed, its value, its unit and its form', async () => {
  const limit = {
    quantity: 'phosphate',
    value: 0.03,
    belowDetection: true,
    text: '<0,03',
    unit: 'ppm',
    form: 'P',
  } as const
  const here = opened(temporaryFolder())
  await here.append([nitrate(1, { body: limit })])
  for (const format of formats) {
    const read = readExport(await exported(here, format))
    expect(read).toMatchObject({ ok: true, contents: { entries: [{ body: limit }] } })
  }
})

const cellsOf = async (logbook: Logbook, format: 'csv' | 'xlsx'): Promise<string[][]> => {
  const bytes = await exported(logbook, format)
  if (format === 'csv')
    return Papa.parse<string[]>(bytes.toString().replace('\ufeff', ''), { skipEmptyLines: true }).data
  const read = readBook(bytes)
  if (!read.ok) throw new Error(read.problem.code)
  return read.book.grids[0].rows.map((row) => row.map((cell) => cell?.text ?? ''))
}

test.each(['csv', 'xlsx'] as const)(
  'the columns of %s say what happened to a person, newest state included',
  async (format) => {
    const here = opened(temporaryFolder())
    await here.append([
      nitrate(5),
      nitrate(6, { replaces: nitrate(5).id, body: { ...nitrate(5).body, belowDetection: true } }),
    ])
    const [headings, , first, second] = await cellsOf(here, format)
    const { knownAt } = (await here.asSent())[0]
    expect(headings.slice(0, -1)).toEqual([
      'No.',
      'Received (UTC)',
      'System',
      'Day',
      'Time',
      'Kind',
      'What it says',
      'Quantity',
      'Value',
      'Unit',
      'State',
    ])
    const says = expect.stringContaining('5')
    const rest = ['nitrate', '5', 'mg/L NO3', 'corrected']
    expect(first.slice(0, -1)).toEqual([
      '1',
      knownAt,
      'reef',
      '2026-01-04',
      '',
      'Reading of the water',
      says,
      ...rest,
    ])
    expect(second.slice(7, -1)).toEqual(['nitrate', '<5', 'mg/L NO3', 'holds'])
  },
)

test('a text that a spreadsheet program would run as a formula is none in CSV, and a text in XLSX', async () => {
  const here = opened(temporaryFolder())
  const note = {
    ...nitrate(1),
    kind: 'note',
    body: { text: '=HYPERLINK("http://example.org")' },
    system: '@reef',
  }
  await here.append([note])
  const [, , row] = await cellsOf(here, 'csv')
  expect([row[2], row[6]]).toEqual(["'@reef", `'${note.body.text}`])
  for (const cell of row) expect(cell).not.toMatch(/^[=+\-@\t\r]/)
  const read = readBook(await exported(here, 'xlsx'))
  if (!read.ok) throw new Error(read.problem.code)
  const cells = read.book.grids.flatMap(({ rows }) => rows.flat())
  expect(cells.filter((cell) => cell?.formula !== undefined)).toEqual([])
  expect(cells.map((cell) => cell?.text)).toContain(note.body.text)
})

const issuesOf = (bytes: Uint8Array): readonly Issue[] => {
  const read = readExport(bytes)
  return read.ok ? [] : read.issues
}

test.each(formats)('%s cut off anywhere is refused, and nothing is stored', async (format) => {
  const { logbook } = await keptLog(3)
  const bytes = await exported(logbook, format)
  await fc.assert(
    fc.asyncProperty(fc.integer({ min: 200, max: bytes.length - 4 }), async (length) => {
      const cut = bytes.subarray(0, length)
      expect(issuesOf(cut)).not.toEqual([])
      await expect(takenOver(logbook, cut)).rejects.toThrow()
    }),
  )
  expect(await logbook.read()).toHaveLength(3)
})

test('rows in another order are put right, a row taken out or changed is named', async () => {
  const { logbook } = await keptLog(4)
  const text = (await exported(logbook, 'csv')).toString()
  const [headings, ...rows] = text.trimEnd().split('\r\n')
  const of = (lines: readonly string[]): Buffer => Buffer.from([headings, ...lines].join('\r\n'))
  const read = readExport(of(rows.toReversed()))
  expect(read.ok && read.contents.entries).toEqual(await logbook.asSent())
  expect(issuesOf(of(rows.filter((row) => !row.startsWith('2,'))))).toMatchObject([
    { code: 'cut-off-export', got: 'it holds 3 of 4 entries' },
  ])
  const changed = rows.map((row) => (row.startsWith('3,') ? row.replace('{', '[') : row))
  expect(issuesOf(of(changed))).toMatchObject([{ code: 'changed-export', where: 'Row 5' }])
})

test('a changed attachment is refused by its name, and a newer export asks for an update', async () => {
  const { logbook } = await keptLog(1)
  const document = JSON.parse((await exported(logbook, 'json')).toString())
  const [attachment] = document.attachments
  const as = (changes: object): Buffer => Buffer.from(JSON.stringify({ ...document, ...changes }))
  const base64 = Buffer.from(photograph).fill(1, 7, 8).toString('base64')
  expect(issuesOf(as({ attachments: [{ ...attachment, base64 }] }))).toMatchObject([
    { code: 'changed-export', where: `Attachment ${attachment.sha256}` },
  ])
  expect(issuesOf(as({ version: 2 }))).toMatchObject([{ code: 'newer-export' }])
})

test('an attachment that the log has lost is left out by name, and the rest is exported', async () => {
  const { folder, logbook } = await keptLog(2)
  const [{ sha256 }] = await logbook.attachments()
  writeFileSync(`${folder}/attachments/${sha256}`, 'damaged')
  for (const format of formats) {
    const there = opened(temporaryFolder())
    const taken = await takenOver(there, await exported(logbook, format))
    expect(taken).toMatchObject({ leftOut: [sha256] })
  }
})

test('an export is known by what it holds, and other files are none', async () => {
  const { logbook } = await keptLog(1)
  for (const format of formats) expect(isExport(await exported(logbook, format))).toBe(true)
  const others = [
    '',
    '{"format":"other"}',
    'date,NO3\n2026-01-01,5\n',
    'PK\u0003\u0004',
    '{',
    `a\n${wholeHeading}`,
  ]
  for (const other of others) expect(isExport(Buffer.from(other))).toBe(false)
  expect(issuesOf(Buffer.from('{}'))).toMatchObject([{ code: 'not-an-export' }])
})

test('the schema that is given out is the one in the repository, and describes what is written', async () => {
  const schema = exportJsonSchema()
  // Written anew by `npx vitest run packages/logbook/src/export -u`.
  await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot('../../schema/export.schema.json')
  const validate = new Ajv({ strict: false, validateFormats: false }).compile(schema)
  const here = opened(temporaryFolder())
  await here.append(samples)
  await here.attach(photograph, 'image/png')
  const document = JSON.parse((await exported(here, 'json')).toString())
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true)
  const [reading] = document.entries.filter(({ kind }: Kept) => kind === 'reading')
  const wrong = { ...reading, body: { ...reading.body, quantity: 'mood' } }
  expect(validate({ ...document, entries: [wrong] })).toBe(false)
})
