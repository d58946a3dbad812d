import type { Grid } from '../book/book.ts'
import { columnsOf } from './columns.ts'
import { type HeaderBlock, headerBlocks, isDate, isFigure } from './header-block.ts'
import type { Column, Table } from './table.ts'
import { filled, type View, viewOf } from './view.ts'

/** The tables of a sheet, read down or across, whichever way more of its figures come to stand in one. */
export function findTables(grid: Grid): { readonly view: View; readonly tables: readonly Table[] } {
  const upright = tablesIn(viewOf(grid))
  if (upright.share > 0.6) return upright
  const turned = tablesIn(viewOf(grid, true))
  return turned.share > upright.share ? turned : upright
}

interface Found {
  readonly view: View
  readonly tables: readonly Table[]
  /** Of all figures, those below a quantity and beside a date. */
  readonly share: number
}

function tablesIn(view: View): Found {
  const blocks = headerBlocks(view)
  const starts = blocks.map((block, at) =>
    at === 0 ? 0 : titlesFrom(view, block, blocks[at - 1]?.bottom ?? 0),
  )
  const tables = blocks.map((block, at): Table => {
    const end = starts[at + 1] ?? view.height
    const titles: string[] = []
    for (let row = starts[at] ?? 0; row < block.top; row++)
      for (const { cell } of filled(view, row)) titles.push(cell.text)
    const columns = columnsOf(view, block, end)
    // where dates run across, what stands above them is a title
    if (view.turned)
      titles.push(
        ...columns.filter(({ at, dateAt, text }) => at < dateAt && text !== '').map(({ text }) => text),
      )
    return { view, layout: block.layout, headerTop: block.top, top: block.bottom + 1, end, titles, columns }
  })
  return { view, tables, share: shareOf(view, tables) }
}

/** Lines of words right above a header, up to the last row with a figure or a date, are its titles. */
function titlesFrom(view: View, { top }: HeaderBlock, above: number): number {
  let start = top
  while (start - 1 > above) {
    const cells = filled(view, start - 1)
    if (cells.length > 1 || cells.some(({ cell }) => isFigure(cell) || isDate(cell))) break
    start--
  }
  return start
}

function shareOf(view: View, tables: readonly Table[]): number {
  let [all, placed] = [0, 0]
  const rows = Math.min(view.height, 2000)
  for (let row = 0; row < rows; row++) {
    const table = tables.find(({ top, end }) => row >= top && row < end)
    for (const { column, cell } of filled(view, row)) {
      if (!isFigure(cell)) continue
      all++
      const found = table?.columns[column]
      if (found !== undefined && holds(found, view, row)) placed++
    }
  }
  return all === 0 ? (tables.length > 0 ? 1 : 0) : placed / all
}

function holds({ header, dateAt }: Column, view: View, row: number): boolean {
  if (header.role === 'date' || header.role === 'day' || header.role === 'time' || header.role === 'value')
    return true
  return header.quantity !== undefined && view.spread(row, dateAt) !== undefined
}
