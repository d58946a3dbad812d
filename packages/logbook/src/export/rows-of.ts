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

/** Gives the rows one after the other, so that none is held: a long log has a million cells. */
export type Rows = (take: (row: WrittenRow) => void) => void

/** The rows of an export in CSV, in the order of the file, those that are empty left out. */
export function csvRows(bytes: Uint8Array): Rows {
  return (take) => {
    let read: ((cells: readonly string[]) => void) | undefined
    Papa.parse<string[]>(decode(bytes).text, {
      delimitersToGuess: [',', ';', '\t'],
      step({ data }) {
        if (read === undefined) read = rowReader(data, 'Row', take)
        else read(data)
      },
    })
  }
}

/** The rows of an export in XLSX, sheet after sheet. @throws Unreadable where it is no workbook */
export function xlsxRows(bytes: Uint8Array): Rows {
  return (take) => {
    for (const { name, rows } of workbookGrids(bytes)) {
      let read: ((cells: readonly string[]) => void) | undefined
      for (const row of rows) {
        const cells = row.map((cell) => cell?.text ?? '')
        if (read === undefined) read = rowReader(cells, `Sheet "${name}", row`, take)
        else read(cells)
      }
    }
  }
}

/** Reads the rows below the headings one after the other; a sheet that somebody added has none of ours. */
function rowReader(
  headings: readonly string[],
  sheet: string,
  take: (row: WrittenRow) => void,
): (cells: readonly string[]) => void {
  const whole = headings.indexOf(wholeHeading)
  let number = 1
  return (cells) => {
    number++
    if (whole === -1 || cells.every((cell) => cell === '')) return
    take({ where: `${sheet} ${number}`, number: cells[0] ?? '', whole: cells.slice(whole).join('') })
  }
}
