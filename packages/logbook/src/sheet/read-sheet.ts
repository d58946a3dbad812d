import { aroundEach, shapeOf } from './around.ts'
import type { Book, Grid } from './book/book.ts'
import { columnLetter } from './book/cell-name.ts'
import { readBook } from './book/read-book.ts'
import { Account, asWritten } from './cells/account.ts'
import { decimalSign } from './cells/figure-text.ts'
import { gather } from './cells/gather.ts'
import type { Gathered } from './cells/gathered.ts'
import { readingOf } from './cells/reading-of.ts'
import { takeValues } from './cells/take-values.ts'
import { withoutReckoned } from './checks/formulas.ts'
import { kitChanges } from './checks/kit-changes.ts'
import { lostPoints } from './checks/lost-points.ts'
import { withoutTwins } from './checks/twin-columns.ts'
import { unitSlips } from './checks/unit-slips.ts'
import { resolveDates } from './dates/resolve-dates.ts'
import { readNotes, takeNotes } from './notes/take-notes.ts'
import { Questions } from './questions.ts'
import { nothingFound, refusal } from './refusals.ts'
import type { Answers, Sheet, SheetColumn } from './sheet.ts'
import { findTables } from './table/find-tables.ts'
import type { Table } from './table/table.ts'
import { filled, type View } from './table/view.ts'

/**
 * Reads a sheet (text with commas, semicolons, tabs or bars, or a workbook) as a careful person would: what
 * it says, what must be asked, what is odd. The one parser for preview and import; pure, and the same under
 * every locale and zone.
 *
 * @param answers  to questions of an earlier reading of the same sheet
 * @param heard    hears how much of it is done, from 0 to 1
 */
export function readSheet(
  bytes: Uint8Array,
  fileName: string,
  answers: Answers = {},
  heard: (share: number) => void = () => undefined,
): Sheet {
  const read = readBook(bytes)
  if (!read.ok) return { ...emptySheet(fileName), issues: [refusal(fileName, read.problem)] }
  const { book } = read
  heard(0.1)
  const found = book.grids.map(findTables)
  const tables = found.flatMap((one) => one.tables)
  const account = new Account(book.grids)
  const questions = new Questions(answers)
  for (const { view, tables: ofSheet } of found) takeHeadings(view, ofSheet, account)

  heard(0.3)
  const around = aroundEach(tables)
  const gathered = together(tables.map((table) => gather(table, around(table), account)))
  heard(0.5)
  const dayOf = resolveDates(gathered.moments, questions, account)
  const noted = readNotes(gathered.notes, questions, account)
  const readable = withoutReckoned(gathered.values, account)
  const taken = takeValues(readable, ({ moment }) => dayOf(moment), noted, questions, account)
  heard(0.8)
  const single = withoutTwins(taken.values, account)
  const byKit = kitChanges(single, noted, questions)
  const inUnit = unitSlips(byKit, questions, account)
  const values = lostPoints(inUnit, questions, account)
  const among = readNotes(taken.notes, questions, account)
  const notes = takeNotes([...noted, ...among], ({ moment }) => dayOf(moment), account)
  const readings = values.map(readingOf)

  const { cells, odd } = account.close()
  const [first] = tables
  const sheet: Sheet = {
    ...emptySheet(fileName),
    ...writing(book),
    titles: tables.flatMap(({ titles }) => titles),
    headerRow: first === undefined ? 0 : first.view.turned ? 1 : first.top,
    layout: first === undefined ? 'wide' : first.view.turned ? 'across' : first.layout,
    columns: tables
      .filter((table, at) => tables.findIndex((one) => shapeOf(one) === shapeOf(table)) === at)
      .flatMap(columnsOf),
    tanks: [...new Set(readings.flatMap(({ tank }) => tank ?? []))],
    shape: JSON.stringify([...new Set(tables.map(shapeOf))].sort()),
    readings,
    notes,
    questions: questions.asked((cell) => account.textOf(cell)),
    odd,
    cells,
  }
  return { ...sheet, issues: issuesOf(fileName, book, tables) }
}

/** What was gathered from all tables; that of a single one is not copied. */
function together(gathered: readonly Gathered[]): Gathered {
  const [only] = gathered
  if (only !== undefined && gathered.length === 1) return only
  return {
    values: gathered.flatMap(({ values }) => values),
    notes: gathered.flatMap(({ notes }) => notes),
    moments: gathered.flatMap(({ moments }) => moments),
  }
}

/** Headings and titles are read as what they are; a heading over nothing is a line of its own, and listed. */
function takeHeadings(view: View, tables: readonly Table[], account: Account): void {
  const sheet = view.sheet === undefined ? {} : { sheet: view.sheet }
  let start = 0
  for (const { headerTop, top, end, columns } of tables) {
    for (let row = start; row < top; row++) {
      for (const { column, cell } of filled(view, row)) {
        const place = { ...sheet, cell: view.name(row, column) }
        const { dateAt = 0 } = columns[column] ?? {}
        const isTitle = row < headerTop || column === dateAt || (view.turned && column < dateAt)
        if (isTitle || row < top - 1 || hasCells(view, column, top, end)) account.read(place)
        else account.list(place, asWritten(cell), 'a heading with nothing below it', 'skipped')
      }
    }
    start = end
  }
}

function hasCells(view: View, column: number, top: number, end: number): boolean {
  for (let row = top; row < end; row++) if (view.cell(row, column) !== undefined) return true
  return false
}

function writing({ encoding, delimiter, grids }: Book): Pick<Sheet, 'encoding' | 'delimiter' | 'decimal'> {
  const texts = function* (): Iterable<string> {
    for (const { rows } of grids)
      for (const row of rows)
        for (const cell of row) if (cell?.number === undefined && cell !== undefined) yield cell.text
  }
  return { encoding, delimiter, decimal: decimalSign(texts()) }
}

function columnsOf({ view, columns }: Table): readonly SheetColumn[] {
  return columns
    .filter(({ text }) => text !== '')
    .map(({ at, text, header, tank }) => ({
      ...(view.sheet !== undefined && { sheet: view.sheet }),
      letter: view.turned ? String(at + 1) : columnLetter(at),
      header: text,
      role: header.quantity ?? header.role ?? (header.isSummary ? 'reckoned' : 'unknown'),
      ...(header.unit !== undefined && { unit: header.unit }),
      ...(header.form !== undefined && { form: header.form }),
      ...(tank !== undefined && { tank }),
    }))
}

function issuesOf(fileName: string, { grids }: Book, tables: readonly Table[]): Sheet['issues'] {
  const [first] = tables
  if (first === undefined)
    return [nothingFound(fileName, 'no-header', { firstLine: firstLine(grids), headerRow: 0 })]
  const isEmpty = tables.every(({ view, top, end }) => {
    for (let row = top; row < end; row++) if (filled(view, row).length > 0) return false
    return true
  })
  return isEmpty ? [nothingFound(fileName, 'no-rows', { firstLine: '', headerRow: first.top })] : []
}

function firstLine(grids: readonly Grid[]): string {
  const row = grids.flatMap(({ rows }) => rows).find((cells) => cells.some((cell) => cell !== undefined))
  return (row ?? [])
    .map((cell) => cell?.text ?? '')
    .join(' ')
    .trim()
}

function emptySheet(fileName: string): Sheet {
  const none = {
    titles: [],
    columns: [],
    tanks: [],
    readings: [],
    notes: [],
    questions: [],
    odd: [],
    issues: [],
  }
  const unknown = {
    encoding: '',
    delimiter: '',
    decimal: '.',
    headerRow: 0,
    layout: 'wide',
    shape: '',
  } as const
  return { fileName, ...unknown, ...none, cells: { held: 0, read: 0, waiting: 0, listed: 0 } }
}
