import Papa from 'papaparse'

import type { Gathered } from './gather.ts'
import { attachmentRows, entryRows, headings, headRow, type Row } from './table.ts'

/**
 * The export as CSV (RFC 4180, UTF-8 with its mark, which spreadsheet programs need): an entry a row.
 * A cell that a spreadsheet program would run as a formula is written with an apostrophe before it.
 */
export async function* writeCsv(log: Gathered): AsyncGenerator<string> {
  yield `\ufeff${line([...headings])}`
  yield inColumns(headRow(log))
  for (const row of entryRows(log.entries)) yield inColumns(row)
  for await (const row of attachmentRows(log)) yield inColumns(row)
}

function inColumns({ cells, whole }: Row): string {
  const empty = Array<string>(headings.length - 1 - cells.length).fill('')
  return line([...cells, ...empty, whole])
}

const line = (cells: readonly (string | number)[]): string =>
  `${Papa.unparse([cells], { escapeFormulae: true })}\r\n`
