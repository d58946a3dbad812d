import type { Issue } from '../issue.ts'
import { decode } from './decode.ts'
import { findHeaderRow, type HeaderRow } from './header-row.ts'
import { type DateOrder, dateOrder, looksLikeDate } from './read-date.ts'
import type { Answers, Sheet, SheetColumn, SheetQuestion } from './sheet.ts'
import { columnLetter, type Table, tableOf } from './table.ts'
import { takeCells } from './take-cells.ts'
import { longCells, wideCells } from './written-cells.ts'

/**
 * Reads a sheet of text (comma, semicolon, tab or bar between fields) as a careful person would: what it
 * says, what must be asked, what is odd. The one parser for preview and import; pure, and the same under
 * every locale.
 *
 * @param answers  to questions of an earlier reading of the same sheet
 */
export function readSheet(bytes: Uint8Array, fileName: string, answers: Answers = {}): Sheet {
  const decoded = decode(bytes)
  if (!decoded.ok) return nothing(fileName, notText(fileName, decoded.code, decoded.looksLike))
  const { encoding, text } = decoded
  const table = tableOf(text)
  if (table === undefined) return { ...nothing(fileName, noColumns(fileName)), encoding }
  const found = findHeaderRow(table.rows)
  const seen = { encoding, delimiter: table.delimiter, decimal: table.decimal }
  if (found === undefined) return { ...nothing(fileName, noHeader(fileName, table)), ...seen }
  const { cells, odd } = found.layout === 'long' ? longCells(table.rows, found) : wideCells(table.rows, found)
  const dates = orderOf(table, found, answers)
  const taken = takeCells(cells, table.decimal, dates.order, answers)
  const below = table.rows.slice(found.row + 1).filter((row) => row.some((field) => field !== ''))
  return {
    fileName,
    ...seen,
    titles: table.rows
      .slice(0, found.row)
      .map((row) => row.join(' ').trim())
      .filter((line) => line !== ''),
    headerRow: found.row + 1,
    layout: found.layout,
    columns: columnsOf(table, found),
    readings: taken.readings,
    notes: taken.notes,
    questions: [...dates.questions, ...taken.questions],
    odd: [...odd, ...taken.odd],
    issues: below.length === 0 ? [noRows(fileName, found.row + 1)] : [],
  }
}

function orderOf(
  { rows }: Table,
  { row, headers }: HeaderRow,
  answers: Answers,
): { readonly order: DateOrder | undefined; readonly questions: readonly SheetQuestion[] } {
  const column = headers.findIndex((header) => header.role === 'date')
  const cells = rows.slice(row + 1).map((fields) => fields[column] ?? '')
  const decided = dateOrder(cells)
  // Where no date hangs on the order, either order reads them all.
  if (decided !== undefined) return { order: decided === 'none' ? 'day first' : decided, questions: [] }
  const id = `date-order:${columnLetter(column)}`
  const answer = answers[id]
  if (answer === 'day first' || answer === 'month first') return { order: answer, questions: [] }
  const question = 'Day first or month first? The dates can be read both ways.'
  const waiting = cells.filter(looksLikeDate).length
  const options = ['month first', 'day first']
  const where = `column ${columnLetter(column)}`
  return { order: undefined, questions: [{ id, topic: 'date-order', where, question, options, waiting }] }
}

function columnsOf({ rows }: Table, { row, headers }: HeaderRow): readonly SheetColumn[] {
  return headers.map(({ role, unitAsWritten, form }, column) => ({
    letter: columnLetter(column),
    header: rows[row][column],
    role,
    ...(unitAsWritten !== undefined && { unit: unitAsWritten }),
    ...(form !== undefined && { form }),
  }))
}

function nothing(fileName: string, issue: Issue): Sheet {
  const none = { titles: [], columns: [], readings: [], notes: [], questions: [], odd: [] }
  const unknown = { encoding: '', delimiter: '', decimal: '.', headerRow: 0, layout: 'wide' } as const
  return { fileName, ...unknown, ...none, issues: [issue] }
}

const accepted =
  'A sheet of text with a header row: a date and at least one quantity, such as "Date, NO3 (mg/L)".'

function notText(fileName: string, code: 'empty-file' | 'not-text', looksLike = 'no text'): Issue {
  const got = code === 'empty-file' ? 'the file is empty' : `the file is ${looksLike}`
  const next = code === 'empty-file' ? 'Choose another file.' : 'Save the sheet as CSV and choose that file.'
  return { code, where: `Sheet "${fileName}"`, got, accepted, next: `${next} Nothing is stored.` }
}

function noColumns(fileName: string): Issue {
  const next = 'Save the sheet with commas, semicolons or tabs between its columns. Nothing is stored.'
  return { code: 'no-columns', where: `Sheet "${fileName}"`, got: 'there is one column only', accepted, next }
}

function noHeader(fileName: string, { rows }: Table): Issue {
  const first = rows.find((row) => row.some((field) => field !== '')) ?? []
  const got = `no header row was found (the first line is "${first.join(' ').slice(0, 80)}")`
  const next = 'Name the columns in one row above the readings. Nothing is stored.'
  return { code: 'no-header', where: `Sheet "${fileName}"`, got, accepted, next }
}

function noRows(fileName: string, headerRow: number): Issue {
  const got = `below the header in row ${headerRow} there is nothing`
  const next = 'Choose a sheet with readings. Nothing is stored.'
  return {
    code: 'no-rows',
    where: `Sheet "${fileName}"`,
    got,
    accepted: 'At least one row of readings.',
    next,
  }
}
