import { Zip, ZipDeflate } from 'fflate'

import type { Gathered } from './gather.ts'
import { attachmentRows, entryRows, headings, headRow, type Row, wholeHeading } from './table.ts'
import { contents, relations, sheetEnd, sheetRow, sheetStart, styles, types } from './xlsx-parts.ts'

/** Rows that are packed together: few enough to hold no memory, many enough to lose no time. */
const together = 500

/** The export as a workbook (XLSX): the rows of the CSV, each a text or a number and never a formula. */
export async function* writeXlsx(log: Gathered): AsyncGenerator<Uint8Array> {
  const packed: Uint8Array[] = []
  const zip = new Zip((error, part) => {
    if (error) throw error
    packed.push(part)
  })
  const begin = (path: string): ((text: string, last?: boolean) => void) => {
    const part = new ZipDeflate(path, { level: 6 })
    part.mtime = log.head.madeAt
    zip.add(part)
    return (text, last = false) => part.push(Buffer.from(text), last)
  }
  const sheets = log.attachments.length > 0 ? ['Holdfast log', 'Attachments'] : ['Holdfast log']
  begin('[Content_Types].xml')(types(sheets), true)
  begin('_rels/.rels')(relations(['xl/workbook.xml']), true)
  begin('xl/workbook.xml')(contents(sheets), true)
  begin('xl/_rels/workbook.xml.rels')(
    relations(['styles.xml', ...sheets.map((_, place) => `worksheets/sheet${place + 1}.xml`)]),
    true,
  )
  begin('xl/styles.xml')(styles, true)
  for (const [place] of sheets.entries()) {
    const write = begin(`xl/worksheets/sheet${place + 1}.xml`)
    const rows = place === 0 ? logRows(log) : attachmentRows(log)
    write(sheetStart)
    let [number, text] = [
      1,
      sheetRow(1, { cells: [...headings.slice(0, -1)], whole: wholeHeading }, 'heading'),
    ]
    for await (const row of rows) {
      number++
      text += sheetRow(number, row)
      if (number % together > 0) continue
      write(text)
      text = ''
      yield* packed.splice(0)
    }
    write(text + sheetEnd(number), true)
    yield* packed.splice(0)
  }
  zip.end()
  yield* packed
}

async function* logRows(log: Gathered): AsyncGenerator<Row> {
  yield headRow(log)
  yield* entryRows(log.entries)
}
