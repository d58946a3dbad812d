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
  const rows: WrittenRow[] = []
  let take: ((cells: readonly string[]) => WrittenRow | undefined) | undefined
  // Row by row: the cells for people are let go of at once, of which a long log has a million.
  Papa.parse<string[]>(decode(bytes).text, {
    delimitersToGuess: [',', ';', '\t'],
    step({ data }) {
      if (take === undefined) take = rowReader(data, 'Row')
      else rows.push(...present(take(data)))
    },
  })
  return rows
}

/** The rows of an export in XLSX, sheet after sheet. @throws Unreadable where it is no workbook */
export function xlsxRows(bytes: Uint8Array): readonly WrittenRow[] {
  return workbookGrids(bytes).flatMap(({ name, rows }) => {
    const [headings, ...below] = rows.map((row) => row.map((cell) => cell?.text ?? ''))
    const take = rowReader(headings ?? [], `Sheet "${name}", row`)
    return below.flatMap((cells) => present(take(cells)))
  })
}

const present = (row: WrittenRow | undefined): WrittenRow[] => (row === undefined ? [] : [row])

/** Reads the rows below the headings one after the other; a sheet that somebody added has none of ours. */
function rowReader(
  headings: readonly string[],
  sheet: string,
): (cells: readonly string[]) => WrittenRow | undefined {
  const whole = headings.indexOf(wholeHeading)
  let number = 1
  return (cells) => {
    number++
    if (whole === -1 || cells.every((cell) => cell === '')) return undefined
    return { where: `${sheet} ${number}`, number: cells[0] ?? '', whole: cells.slice(whole).join('') }
  }
}
