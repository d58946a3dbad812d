import type { Area, Cell, Grid } from '../book/book.ts'
import { cellName } from '../book/cell-name.ts'

/**
 * A grid as it is read: rows of moments below a header. A sheet whose dates run across is turned, and then
 * read as any other; places keep the names that they have in the file.
 */
export interface View {
  readonly sheet?: string
  readonly turned: boolean
  readonly height: number
  readonly width: number
  readonly cell: (row: number, column: number) => Cell | undefined
  /** The cell, or the one whose merged area covers this place. */
  readonly spread: (row: number, column: number) => Cell | undefined
  /** A1-style name in the file. */
  readonly name: (row: number, column: number) => string
}

export function viewOf({ name: sheet, rows, merged }: Grid, turned = false): View {
  const [height, width] = [rows.length, rows.reduce((most, row) => Math.max(most, row.length), 0)]
  const covering = lookUp(turned ? merged.map(turnedArea) : merged)
  const cell: View['cell'] = turned
    ? (row, column) => rows[column]?.[row]
    : (row, column) => rows[row]?.[column]
  return {
    ...(sheet !== undefined && { sheet }),
    turned,
    height: turned ? width : height,
    width: turned ? height : width,
    cell,
    spread: (row, column) => {
      const own = cell(row, column)
      if (own !== undefined) return own
      const area = covering(row, column)
      return area && cell(area.top, area.left)
    },
    name: turned ? (row, column) => cellName(column, row) : cellName,
  }
}

/** Tall areas are few in an honest sheet; beyond so many rows they are not looked at. */
const tallest = 1000

/** Finds the area that covers a place, by its row. */
function lookUp(areas: readonly Area[]): (row: number, column: number) => Area | undefined {
  const byRow = new Map<number, Area[]>()
  for (const area of areas) {
    for (let row = area.top; row <= Math.min(area.bottom, area.top + tallest); row++) {
      const known = byRow.get(row)
      if (known === undefined) byRow.set(row, [area])
      else known.push(area)
    }
  }
  return (row, column) => byRow.get(row)?.find(({ left, right }) => column >= left && column <= right)
}

const turnedArea = ({ top, left, bottom, right }: Area): Area => ({
  top: left,
  left: top,
  bottom: right,
  right: bottom,
})

/** The filled places of a row. */
export function filled(view: View, row: number): readonly { readonly column: number; readonly cell: Cell }[] {
  const found: { column: number; cell: Cell }[] = []
  for (let column = 0; column < view.width; column++) {
    const cell = view.cell(row, column)
    if (cell !== undefined) found.push({ column, cell })
  }
  return found
}
