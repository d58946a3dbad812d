import type { Cell } from '../book/book.ts'
import { parseDate } from '../dates/parse-date.ts'
import { memo } from '../memo.ts'
import { type Header, isKnown, isUnitText, readHeader } from './header.ts'
import { filled, type View } from './view.ts'

/** The rows of a header, both within. */
export interface HeaderBlock {
  readonly top: number
  readonly bottom: number
  readonly layout: 'wide' | 'long'
}

/** Rows below a header in which a date must come, where no word says which column holds dates. */
const rowsToDate = 6

/** Whether a cell is a figure: a number, a limit or a span, with or without a unit. */
export function isFigure({ text, number, date, formula }: Cell): boolean {
  return formula !== undefined || (number !== undefined && date === undefined) || isFigureText(text)
}

const isFigureText = memo(
  (text) => /^[<>~≤≥]*\s*[-+]?[.,]?\d[\d.,]*(?:\s*-\s*[\d.,]+)?\s*\S{0,6}$/.test(text) && !isUnitText(text),
)

/** Whether a cell is a date, or the day or the month of one. */
export const isDate = ({ text, date }: Cell): boolean => date !== undefined || isDateText(text)

const isDateText = memo((text) => parseDate(text) !== undefined)

/** Every header of a view, from the top; a second row with units or groups belongs to the first. */
export function headerBlocks(view: View): readonly HeaderBlock[] {
  const blocks: HeaderBlock[] = []
  for (let row = 0; row < view.height; row++) {
    const layout = headerLayout(view, row)
    if (layout === undefined) continue
    let [top, bottom] = [row, row]
    const above = blocks.at(-1)?.bottom ?? -1
    while (top - 1 > above && row - top < 2 && isGroupRow(view, top - 1, row)) top--
    while (bottom - row < 2 && isUnitRow(view, bottom + 1)) bottom++
    blocks.push({ top, bottom, layout })
    row = bottom
  }
  return blocks
}

/** A row of words that name a date and a quantity, or two quantities above dates, or parameter and value. */
function headerLayout(view: View, row: number): 'wide' | 'long' | undefined {
  const cells = filled(view, row)
  if (cells.length < 2) return undefined
  if (cells.some(({ cell }) => isDate(cell) || isFigure(cell))) return undefined
  const headers = cells.map(({ cell }) => readHeader(cell.text))
  const has = (role: Header['role']): boolean => headers.some((header) => header.role === role)
  const quantities = headers.filter(({ quantity }) => quantity !== undefined).length
  const dated = has('date') || has('day')
  if (has('parameter') && (has('value') || has('unit')) && (dated || datesBelow(view, row))) return 'long'
  if (quantities === 0 && !(dated && has('water change'))) return undefined
  return dated || datesBelow(view, row) ? 'wide' : undefined
}

/** Whether one of the next rows begins with a date, so that this may be a header without the word. */
function datesBelow(view: View, row: number): boolean {
  for (let next = row + 1; next <= row + rowsToDate && next < view.height; next++)
    if (filled(view, next).some(({ cell }) => isDate(cell))) return true
  return false
}

/** Words over several columns: the tanks, the kits, the time of day. A title stands alone in its row. */
function isGroupRow(view: View, row: number, header: number): boolean {
  const cells = filled(view, row)
  if (cells.length === 0 || cells.some(({ cell }) => isFigure(cell) || isDate(cell))) return false
  const spread = cells.some(({ column, cell }) => view.spread(row, column + 1) === cell)
  const first = filled(view, header)[0]?.column ?? 0
  const covers = cells.some(({ column }) => column > first) && (cells.length > 1 || spread)
  return covers || cells.some(({ cell }) => readHeader(cell.text).role === 'date')
}

/** A row of units, or of the second words of a header whose first row was merged. */
function isUnitRow(view: View, row: number): boolean {
  const cells = filled(view, row)
  if (cells.length === 0 || cells.some(({ cell }) => isDate(cell) || isFigure(cell))) return false
  const fitting = cells.filter(
    ({ cell }) => isUnitText(cell.text) || isBareUnit(cell.text) || isKnown(readHeader(cell.text)),
  )
  return fitting.length === cells.length || (cells.length > 3 && fitting.length >= cells.length - 1)
}

const isBareUnit = (text: string): boolean => {
  const inside = text.replace(/^[([]|[)\]]$/g, '')
  return isUnitText(inside) || /^(?:[-=_:+]+|pH|SG|as \S+|als \S+)$/i.test(inside)
}
