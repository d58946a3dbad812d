import Papa from 'papaparse'

import { type Cell, filledCells, type Grid, limits, tooLarge, Unreadable } from './book.ts'

const delimiters = ['\t', ';', ',', '|'] as const

/** Rows on which the delimiter is chosen; a sheet that is regular there is regular everywhere. */
const sample = 2000

/**
 * A text as one grid, cut at the delimiter that makes the most regular table. Blank records are kept, so
 * that rows count as in the file.
 *
 * @throws Unreadable where no delimiter makes columns, or there are too many
 */
export function delimitedGrid(text: string): { readonly grid: Grid; readonly delimiter: string } {
  const delimiter = bestDelimiter(text)
  if (delimiter === undefined) throw new Unreadable({ code: 'no-columns' })
  const cellOf = internedCells()
  const rows: (Cell | undefined)[][] = []
  let [cells, filled] = [0, 0]
  Papa.parse<string[]>(text.trimEnd(), {
    delimiter,
    step: ({ data }) => {
      const row = data.map(cellOf)
      while (row.length > 0 && row.at(-1) === undefined) row.pop()
      cells += row.length
      for (const cell of row) if (cell !== undefined) filled++
      if (row.length > limits.columns) throw tooLarge('columns in a row', limits.columns)
      if (cells > limits.cells) throw tooLarge('cells', limits.cells)
      if (filled > limits.filled) throw tooLarge(filledCells, limits.filled)
      rows.push(row)
      if (rows.length > limits.rows) throw tooLarge('rows', limits.rows)
    },
  })
  return { grid: { rows, merged: [] }, delimiter }
}

/** Equal texts share one cell: a long log repeats its figures, and memory is kept small. */
function internedCells(): (field: string) => Cell | undefined {
  const known = new Map<string, Cell>()
  return (field) => {
    const text = field.trim()
    if (text === '') return undefined
    const found = known.get(text)
    if (found !== undefined) return found
    if (text.length > limits.characters) throw tooLarge('characters in a cell', limits.characters)
    const cell = { text }
    known.set(text, cell)
    return cell
  }
}

/** The delimiter under which most rows have the same number of fields, more than one. */
function bestDelimiter(text: string): string | undefined {
  let best: { readonly fit: number; readonly width: number; readonly delimiter: string } | undefined
  for (const delimiter of delimiters) {
    const { data } = Papa.parse<string[]>(text.slice(0, 1_000_000).trimEnd(), { delimiter, preview: sample })
    if (data.some((row) => row.length > limits.columns)) throw tooLarge('columns in a row', limits.columns)
    const { width, share: fit } = commonWidth(data)
    if (width < 2) continue
    if (best === undefined || fit > best.fit || (fit === best.fit && width > best.width))
      best = { fit, width, delimiter }
  }
  return best?.delimiter
}

/** The number of fields that most rows with anything in them have, and the share of rows that do. */
function commonWidth(rows: readonly (readonly string[])[]): {
  readonly width: number
  readonly share: number
} {
  const counts = new Map<number, number>()
  const filled = rows.filter((row) => row.some((field) => field.trim() !== ''))
  for (const row of filled) counts.set(row.length, (counts.get(row.length) ?? 0) + 1)
  let width = 0
  for (const [fields, rowsOfIt] of counts)
    if (fields > 1 && rowsOfIt > (counts.get(width) ?? 0)) width = fields
  return { width, share: (counts.get(width) ?? 0) / Math.max(1, filled.length) }
}
