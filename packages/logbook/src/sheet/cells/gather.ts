import type { Cell } from '../book/book.ts'
import { columnLetter } from '../book/cell-name.ts'
import { parseTime } from '../dates/parse-date.ts'
import { weekdayNamed } from '../dates/weekdays.ts'
import { type Header, readHeader } from '../table/header.ts'
import { isDate, isFigure } from '../table/header-block.ts'
import type { Column, Series, Table } from '../table/table.ts'
import { filled } from '../table/view.ts'
import type { MonthAndYear } from '../words/months.ts'
import { isSummary } from '../words/summary.ts'
import { type Account, asWritten, type Place } from './account.ts'
import { changeText } from './change-text.ts'
import type { FoundNote, FoundValue, Gathered } from './gathered.ts'
import { Moments } from './moments.ts'

/** What is said of a table by what stands around it. */
export interface Around {
  readonly context: MonthAndYear
  /** Before the letter of a column in the key of its questions; empty where all sheets are alike. */
  readonly keyPrefix: string
  readonly whereSuffix: string
  /** Unit of columns that name none, by a title such as "all ppm unless written". */
  readonly unit?: string
  readonly tank?: string
}

/**
 * Filled cells from which on a row that is there twice was copied: a date with two coarse figures can well be
 * read twice on one day, a date with four hardly.
 */
const fewestToRepeat = { long: 3, wide: 4 } as const

type Filled = { readonly column: number; readonly cell: Cell }

/** Walks a table and gives every cell below its header a place: a value, a note, a date, or the list of odd ones. */
export function gather(table: Table, around: Around, account: Account): Gathered {
  const { view, columns } = table
  const [first] = columns
  const dateKey = `${around.keyPrefix}${nameOf(table, first?.dateAt ?? 0)}`
  const moments = new Moments(table, around.context, dateKey)
  const values: FoundValue[] = []
  const notes: FoundNote[] = []
  const seen = new Map<string, number>()
  const walk = { table, around, account, moments, values, notes, series: new Map<string, Series>() }
  for (let row = table.top; row < table.end; row++) {
    const cells = filled(view, row)
    if (cells.length === 0) continue
    const place = (column: number): Place => placeOf(table, row, column)
    const listAll = (why: string, taken?: string): void => {
      for (const { column, cell } of cells) account.list(place(column), asWritten(cell), why, taken)
    }
    const label = labelOf(table, cells)
    if (label !== undefined && isSummary(label)) {
      listAll('a row of reckoned figures, not of readings')
      continue
    }
    // below a date that covers several rows equal cells are of several days
    const isDated = cells.some(({ column }) => columns[column]?.dateAt === column)
    let content = ''
    for (const { column, cell } of cells) content += `${column}\t${cell.text}\n`
    const before = isDated ? seen.get(content) : undefined
    if (before !== undefined && cells.length >= fewestToRepeat[table.layout]) {
      listAll(`the row repeats row ${before + 1}`, 'imported once')
      continue
    }
    if (before !== undefined)
      for (const { column, cell } of cells)
        account.point(place(column), asWritten(cell), `the row repeats row ${before + 1}`, 'both are taken')
    if (isDated) seen.set(content, row)
    if (table.layout === 'long') longRow(walk, row, cells)
    else wideRow(walk, row, cells)
  }
  return { values, notes, moments: moments.all }
}

interface Walk {
  readonly table: Table
  readonly around: Around
  readonly account: Account
  readonly moments: Moments
  readonly values: FoundValue[]
  readonly notes: FoundNote[]
  /** One for each column, and each tank and kit that its rows name. */
  readonly series: Map<string, Series>
}

const placeOf = ({ view: { sheet, name } }: Table, row: number, column: number): Place =>
  sheet === undefined ? { cell: name(row, column) } : { sheet, cell: name(row, column) }

/** A column by its letter; in a turned sheet it is a row, by its number. */
const nameOf = ({ view }: Table, column: number): string =>
  view.turned ? String(column + 1) : columnLetter(column)

/** The words at the head of a row that has no date. */
function labelOf({ columns }: Table, cells: readonly Filled[]): string | undefined {
  const [first] = cells
  if (first === undefined || isDate(first.cell) || isFigure(first.cell)) return undefined
  const { header, dateAt } = columns[first.column] ?? {}
  const isHead = first.column <= (dateAt ?? 0) || header?.role === 'date' || header?.role === 'day'
  return isHead ? first.cell.text : undefined
}

function wideRow(walk: Walk, row: number, cells: readonly Filled[]): void {
  const { table, account, moments } = walk
  const { columns, view } = table
  const place = (column: number): Place => placeOf(table, row, column)
  const found = new Map<number, ReturnType<Moments['at']>>()
  const momentOf = (column: Column): ReturnType<Moments['at']> => {
    if (!found.has(column.dateAt)) found.set(column.dateAt, moments.at(row, column))
    const moment = found.get(column.dateAt)
    return moment && column.half !== undefined ? { ...moment, half: column.half } : moment
  }
  const cellUnder = (role: Header['role']): string | undefined => {
    const column = columns.find(({ header }) => header.role === role)
    return column && view.spread(row, column.at)?.text
  }
  const [tank, kit] = [cellUnder('tank'), cellUnder('kit')]
  for (const { column: at, cell } of cells) {
    const column = columns[at]
    if (column === undefined) continue
    const moment = momentOf(column)
    const { header } = column
    if (moment === undefined) {
      const isDateCell = at === column.dateAt
      const why = !cells.some((one) => isFigure(one.cell))
        ? 'a line of words without a date'
        : isDateCell
          ? 'no date that we can read'
          : 'the row has no date'
      account.list(place(at), asWritten(cell), why)
      continue
    }
    const series = at === column.dateAt ? undefined : seriesOf(walk, column, { tank, kit })
    if (series !== undefined) {
      const found = { cell: view.name(row, at), content: cell, moment, table, row, series }
      walk.values.push(view.sheet === undefined ? found : { sheet: view.sheet, ...found })
      continue
    }
    const base = { ...place(at), content: cell, moment, table, row }
    const isWeekday = (): boolean => weekdayNamed(cell.text) !== undefined
    const isTime =
      header.role === 'time' &&
      (cell.time !== undefined || cell.number !== undefined || parseTime(cell.text) !== undefined)
    if (at === column.dateAt || isTime || header.role === 'tank' || header.role === 'kit') account.read(base)
    else if (header.role === 'day' && isWeekday()) account.read(base)
    else if (header.isSummary) account.list(base, asWritten(cell), `"${column.text}" is reckoned, not read`)
    else if (header.isOther) account.list(base, asWritten(cell), `the log keeps no "${column.text}"`)
    else if (header.role === 'water change')
      walk.notes.push({ ...base, ...tankOf(walk, column, tank), text: changeText(column, cell) })
    else if (header.role === 'note' || isWords(cell)) {
      if (column.text === '' && isWeekday()) account.read(base)
      else walk.notes.push({ ...base, ...tankOf(walk, column, tank), text: headed(column, cell) })
    } else {
      const why = column.text === '' ? 'the column has no header' : `column "${column.text}" is not known`
      account.list(base, asWritten(cell), why)
    }
  }
}

function tankOf({ around }: Walk, column: Column, ofRow: string | undefined): { readonly tank?: string } {
  const tank = column.tank ?? ofRow ?? around.tank
  return tank === undefined ? {} : { tank }
}

/** The series of a column that holds readings. */
function seriesOf(walk: Walk, column: Column, ofRow: OfRow): Series | undefined {
  const { quantity, isSummary, isOther } = column.header
  if (quantity === undefined || isSummary || isOther) return undefined
  const { tank, kit } = ofRow
  const key = tank === undefined && kit === undefined ? String(column.at) : `${column.at}\n${tank}\n${kit}`
  const known = walk.series.get(key) ?? newSeries(walk, column, ofRow)
  if (known !== undefined) walk.series.set(key, known)
  return known
}

interface OfRow {
  readonly tank: string | undefined
  readonly kit: string | undefined
}

function newSeries(walk: Walk, column: Column, ofRow: OfRow): Series | undefined {
  const { table, around } = walk
  const { header } = column
  if (header.quantity === undefined) return undefined
  const kit = column.kit ?? ofRow.kit
  const name = nameOf(table, column.at)
  return {
    key: `${around.keyPrefix}${name}`,
    where: `${table.view.turned ? 'row' : 'column'} ${name}${around.whereSuffix}`,
    quantity: header.quantity,
    header,
    ...(around.unit !== undefined && { titleUnit: around.unit }),
    ...tankOf(walk, column, ofRow.tank),
    ...(kit !== undefined && { kit }),
  }
}

/** One reading a row: its quantity, unit and value stand in columns of their own. */
function longRow(walk: Walk, row: number, cells: readonly Filled[]): void {
  const { table, account, moments, around } = walk
  const { columns, view } = table
  const under = (role: Header['role']): Filled | undefined => {
    const column = columns.find(({ header }) => header.role === role)
    const cell = column && view.cell(row, column.at)
    return column && cell && { column: column.at, cell }
  }
  const place = (column: number): Place => placeOf(table, row, column)
  const value = under('value')
  const [dateColumn] = columns.filter(({ at, dateAt }) => at === dateAt)
  const moment = dateColumn && moments.at(row, columns[value?.column ?? dateColumn.at] ?? dateColumn)
  if (moment === undefined || value === undefined) {
    const why = moment === undefined ? 'the row has no date' : 'the row has no value'
    for (const { column, cell } of cells) account.list(place(column), asWritten(cell), why)
    return
  }
  const [parameter, unit, note] = [
    under('parameter')?.cell.text ?? '',
    under('unit')?.cell.text ?? '',
    under('note')?.cell.text,
  ]
  const said = `${parameter} ${unit}`.trim()
  const header = readHeader(said)
  const [tank, kit] = [under('tank')?.cell.text ?? around.tank, under('kit')?.cell.text]
  const base = { ...place(value.column), content: value.cell, moment, table, row }
  const apart = { ...(tank !== undefined && { tank }), ...(kit !== undefined && { kit }) }
  for (const { column } of cells) if (column !== value.column) account.read(place(column))
  for (const { column, cell } of cells) {
    const { header: above, text } = columns[column] ?? {}
    const isPlaced = column === value.column || column === dateColumn?.at || above?.role !== undefined
    if (!isPlaced) account.list(place(column), asWritten(cell), `column "${text ?? ''}" is not known`)
  }
  if (header.quantity !== undefined) {
    const asked = {
      key: `${around.keyPrefix}${said}`,
      where: `${parameter || said} in column ${columnLetter(value.column)}`,
    }
    const key = JSON.stringify([parameter, unit, tank, kit])
    const series = walk.series.get(key) ?? {
      ...asked,
      quantity: header.quantity,
      header: { ...header, ...withoutSpace(unit) },
      ...apart,
    }
    walk.series.set(key, series)
    walk.values.push({ ...base, series, ...(note !== undefined && { remark: note }) })
  } else if (
    header.role === 'water change' ||
    header.role === 'note' ||
    (parameter !== '' && !isFigure(value.cell) && isWords(value.cell))
  ) {
    const words = header.role === 'note' ? [value.cell.text, note] : [parameter, value.cell.text, unit, note]
    const text = words.filter((word) => word !== undefined && word !== '').join(' ')
    walk.notes.push({ ...base, ...(tank !== undefined && { tank }), text })
  } else account.list(base, asWritten(value.cell), `the parameter "${parameter}" is not known`, 'left out')
}

/** Words below a heading that is no usual one for notes are kept with it. */
const headed = ({ header, text }: Column, cell: Cell): string =>
  header.role === 'note' || text === '' ? cell.text : `${text}: ${cell.text}`

/** The unit as it stands in its column, with its form. */
const withoutSpace = (unit: string): { readonly unit?: string } => (unit === '' ? {} : { unit })

/** Two words or more, or one that is long: a remark, and no mark in a table. */
const isWords = ({ text, formula }: Cell): boolean =>
  formula === undefined && /\p{L}{2,}.*\s+\S*\p{L}|\p{L}{4,}/u.test(text) && !isFigure({ text })
