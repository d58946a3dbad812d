import { strToU8, zipSync } from 'fflate'
import { expect, test } from 'vitest'

import { readBook } from './read-book.ts'

const contents = '<workbook xmlns:r="r"><sheets><sheet name="log" r:id="rId1"/></sheets></workbook>'
const targets = '<Relationships><Relationship Id="rId1" Target="worksheets/sheet1.xml"/></Relationships>'
const formats =
  '<styleSheet><numFmts><numFmt numFmtId="165" formatCode="yyyy-mm-dd hh:mm"/></numFmts>' +
  '<cellXfs><xf numFmtId="0"/><xf numFmtId="165"/></cellXfs></styleSheet>'

function book(sheet: string, parts: Readonly<Record<string, string>> = {}): Uint8Array {
  const all = {
    'xl/workbook.xml': contents,
    'xl/_rels/workbook.xml.rels': targets,
    'xl/styles.xml': formats,
    'xl/worksheets/sheet1.xml': `<worksheet>${sheet}</worksheet>`,
    ...parts,
  }
  return zipSync(Object.fromEntries(Object.entries(all).map(([name, text]) => [name, strToU8(text)])))
}

const rowsOf = (bytes: Uint8Array): unknown => {
  const read = readBook(bytes)
  return read.ok ? read.book.grids.map(({ rows }) => rows) : read.problem
}
const row = (cells: string): string => `<sheetData><row r="1">${cells}</row></sheetData>`

test('numbers, words, dates, formulas and gaps of a workbook are read as they stand', () => {
  const cells =
    '<c r="A1" t="inlineStr"><is><t>NO3 &lt;5&gt;</t></is></c><c r="C1"><v>0.07000000000000001</v></c>' +
    '<c r="D1" s="1"><v>46074.8125</v></c><c r="E1"><f>B2*4.43</f><v></v></c><c r="F1" t="s"><v>0</v></c>'
  const texts = { 'xl/sharedStrings.xml': '<sst><si><r><t>two </t></r><r><t>parts</t></r></si></sst>' }
  expect(rowsOf(book(row(cells), texts))).toEqual([
    [
      [
        { text: 'NO3 <5>' },
        undefined,
        { text: '0.07', number: 0.07000000000000001 },
        { text: '2026-02-21 19:30', number: 46074.8125, date: '2026-02-21', time: '19:30' },
        { text: '', formula: 'B2*4.43' },
        { text: 'two parts' },
      ],
    ],
  ])
})

test('a workbook of 1904 counts its days from there', () => {
  const of1904 = contents.replace('<sheets>', '<workbookPr date1904="1"/><sheets>')
  const read = rowsOf(book(row('<c r="A1" s="1"><v>44612</v></c>'), { 'xl/workbook.xml': of1904 }))
  expect(read).toMatchObject([[[{ date: '2026-02-21' }]]])
})

test.each([
  ['entities of its own making', `<!DOCTYPE x [<!ENTITY a "ha">]>${row('')}`, 'broken-workbook'],
  ['nesting without end', '<a>'.repeat(200), 'broken-workbook'],
  ['a sheet that breaks off', '<sheetData><row><c', 'broken-workbook'],
  ['a million columns', row('<c><v>1</v></c>'.repeat(20_000)), 'too-large'],
  ['a cell of the last column', row('<c r="XFD1"><v>1</v></c>'), 'too-large'],
  ['a row beyond all rows', row('<c r="A9999999"><v>1</v></c>'), 'too-large'],
  ['a formula of 100,000 brackets', row(`<c><f>${'('.repeat(100_000)}</f></c>`), 'too-large'],
  ['a cell of a book', row(`<c t="str"><v>${'a'.repeat(30_000)}</v></c>`), 'too-large'],
])('%s is refused', (_, sheet, code) => {
  expect(rowsOf(book(sheet))).toMatchObject({ code })
})

test('a part that unpacks to a bomb is refused before it is unpacked', () => {
  const bomb = zipSync({ 'xl/workbook.xml': strToU8(' '.repeat(30_000_000)) })
  expect(bomb.length).toBeLessThan(60_000)
  expect(rowsOf(bomb)).toMatchObject({ code: 'broken-workbook', why: expect.stringContaining('packed') })
})

test('a part that says less than it holds is refused', () => {
  const bytes = book(row('<c><v>1</v></c>'.repeat(50)))
  const held = `<worksheet>${row('<c><v>1</v></c>'.repeat(50))}</worksheet>`.length
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  for (let at = 0; at + 4 <= bytes.length; at++)
    if (view.getUint32(at, true) === held) view.setUint32(at, 40, true)
  expect(rowsOf(bytes)).toMatchObject({ code: 'broken-workbook' })
})

test('an archive that is no workbook, and one cut short, are refused by name', () => {
  expect(rowsOf(zipSync({ 'a.txt': strToU8('hello') }))).toMatchObject({
    code: 'not-text',
    looksLike: expect.stringContaining('ZIP'),
  })
  expect(rowsOf(book(row('')).subarray(0, 200))).toMatchObject({ code: 'broken-workbook' })
})
