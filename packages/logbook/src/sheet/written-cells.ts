import type { HeaderRow } from './header-row.ts'
import { readTime } from './read-date.ts'
import type { Header } from './read-header.ts'
import { readHeader } from './read-header.ts'
import type { OddCell } from './sheet.ts'
import { cellName, columnLetter } from './table.ts'

/** A cell with something in it, with what its column and row say of it. */
export interface WrittenCell {
  readonly cell: string
  readonly text: string
  /** The date cell of the row, as written. */
  readonly dateText: string
  readonly dateCell: string
  readonly time?: string
  readonly header: Header
  /** What questions about it are kept under: the column, or the parameter in a long sheet. */
  readonly key: string
  readonly where: string
  readonly remark?: string
}

/** All written cells below the header, whichever the layout. */
export interface Written {
  readonly cells: readonly WrittenCell[]
  readonly odd: readonly OddCell[]
}

type Rows = readonly (readonly string[])[]

/** Wide: a column a quantity. */
export function wideCells(rows: Rows, { row: headerRow, headers }: HeaderRow): Written {
  const [dateAt, timeAt] = [place(headers, 'date'), place(headers, 'time')]
  const cells: WrittenCell[] = []
  const odd: OddCell[] = []
  for (const [row, fields] of rows.entries()) {
    if (row <= headerRow) continue
    for (const [column, text] of fields.entries()) {
      const header = headers[column] ?? { role: 'unknown' }
      if (text === '' || header.role === 'date' || header.role === 'time') continue
      const cell = cellName(row, column)
      if (header.role === 'unknown') {
        odd.push({
          cell,
          asWritten: text,
          why: `column "${rows[headerRow][column] ?? ''}" is not known`,
          taken: 'left out',
        })
        continue
      }
      const key = columnLetter(column)
      cells.push({ cell, text, header, key, where: `column ${key}`, ...dated(row, fields, dateAt, timeAt) })
    }
  }
  return { cells, odd }
}

/** Long: one reading a row, its quantity and unit in columns of their own. */
export function longCells(rows: Rows, { row: headerRow, headers }: HeaderRow): Written {
  const at = (role: Header['role']): number => place(headers, role)
  const cells: WrittenCell[] = []
  const odd: OddCell[] = []
  let before = ''
  for (const [row, fields] of rows.entries()) {
    if (row <= headerRow || fields.every((field) => field === '')) continue
    const field = (role: Header['role']): string => fields[at(role)] ?? ''
    const cell = cellName(row, at('value'))
    const text = field('value')
    const same = JSON.stringify(fields)
    if (same === before) {
      odd.push({ cell, asWritten: text, why: 'the row repeats the one above', taken: 'imported once' })
      continue
    }
    before = same
    const said = `${field('parameter')} ${field('unit')}`.trim()
    const parameter = readHeader(said)
    const remark = field('note')
    const rest = { cell, key: said, where: cell, ...dated(row, fields, at('date'), at('time')) }
    if (parameter.role !== 'unknown') {
      cells.push({ ...rest, text, header: parameter, ...(remark !== '' && { remark }) })
    } else {
      const words = [field('parameter'), text, field('unit'), remark].filter((word) => word !== '').join(' ')
      cells.push({ ...rest, text: words, header: { role: 'unknown' } })
    }
  }
  return { cells, odd }
}

const place = (headers: readonly Header[], role: Header['role']): number =>
  headers.findIndex((header) => header.role === role)

function dated(
  row: number,
  fields: readonly string[],
  dateAt: number,
  timeAt: number,
): Pick<WrittenCell, 'dateText' | 'dateCell' | 'time'> {
  const time = readTime(fields[timeAt] ?? '')
  const dateText = fields[dateAt] ?? ''
  return { dateText, dateCell: cellName(row, dateAt), ...(time !== undefined && { time }) }
}
