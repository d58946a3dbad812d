import Papa from 'papaparse'

import { decode } from '../sheet/book/decode.ts'
import { workbookGrids } from '../sheet/book/workbook.ts'
import { wholeHeading } from './table.ts'

/** A row of an export in its table form. */
export interface WrittenRow {
  /** For people: "Row 7", with the sheet where there are several. */
  readonly where: string
  /** The first cell: its place in the order of receipt. */
  readonly number: string
  /** The whole as JSON; empty where it is missing. */
  readonly whole: string
}

/** The rows of an export in CSV, in the order of the file, those that are empty left out. */
export function csvRows(bytes: Uint8Array): readonly WrittenRow[] {
  const { data } = Papa.parse<string[]>(decode(bytes).text, { delimitersToGuess: [',', ';', '\t'] })
  return rowsBelow(data, '')
}

/** The rows of an export in XLSX, sheet after sheet. @throws Unreadable where it is no workbook */
export function xlsxRows(bytes: Uint8Array): readonly WrittenRow[] {
  return workbookGrids(bytes).flatMap(({ name, rows }) =>
    rowsBelow(
      rows.map((row) => row.map((cell) => cell?.text ?? '')),
      `Sheet "${name}", row`,
    ),
  )
}

function rowsBelow([headings, ...rows]: readonly (readonly string[])[], sheet: string): WrittenRow[] {
  const whole = headings?.indexOf(wholeHeading) ?? -1
  // A sheet that somebody added holds nothing of the log.
  if (whole === -1) return []
  return rows.flatMap((cells, place) => {
    if (cells.every((cell) => cell === '')) return []
    const where = `${sheet || 'Row'} ${place + 2}`
    return [{ where, number: cells[0] ?? '', whole: cells.slice(whole).join('') }]
  })
}
