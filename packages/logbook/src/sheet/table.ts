import Papa from 'papaparse'

/** A text as records and fields, with the delimiter and the decimal sign that fit the whole of it. */
export interface Table {
  readonly delimiter: string
  readonly decimal: '.' | ','
  /** Records in order, blank ones kept, so that row numbers are those of the file. */
  readonly rows: readonly (readonly string[])[]
}

const delimiters = ['\t', ';', ',', '|'] as const

/**
 * The delimiter under which most rows have the same number of fields, judged over the whole file;
 * undefined where no delimiter makes columns.
 */
export function tableOf(text: string): Table | undefined {
  let best: { readonly fit: number; readonly width: number; readonly table: Table } | undefined
  for (const delimiter of delimiters) {
    const { data } = Papa.parse<string[]>(text.trimEnd(), { delimiter })
    const rows = data.map((row) => row.map((field) => field.trim()))
    const { width, share: fit } = commonWidth(rows)
    if (width < 2) continue
    if (best === undefined || fit > best.fit || (fit === best.fit && width > best.width)) {
      best = { fit, width, table: { delimiter, decimal: decimalSign(rows), rows } }
    }
  }
  return best?.table
}

/** The number of fields that most rows with anything in them have, and the share of rows that do. */
function commonWidth(rows: readonly (readonly string[])[]): {
  readonly width: number
  readonly share: number
} {
  const counts = new Map<number, number>()
  const filled = rows.filter((row) => row.some((field) => field !== ''))
  for (const row of filled) counts.set(row.length, (counts.get(row.length) ?? 0) + 1)
  let width = 0
  for (const [fields, rowsOfIt] of counts) if (rowsOfIt > (counts.get(width) ?? 0)) width = fields
  return { width, share: (counts.get(width) ?? 0) / Math.max(1, filled.length) }
}

/** The sign that more numbers of the file have; a point where neither has more. */
function decimalSign(rows: readonly (readonly string[])[]): '.' | ',' {
  const fields = rows.flat()
  const commas = fields.filter((field) => /^[<>~]?\s*\d+,\d+$/.test(field)).length
  const points = fields.filter((field) => /^[<>~]?\s*\d+\.\d+$/.test(field)).length
  return commas > points ? ',' : '.'
}

/** Column letters as spreadsheets write them: A, B … Z, AA. */
export function columnLetter(column: number): string {
  const last = String.fromCharCode(65 + (column % 26))
  return column < 26 ? last : columnLetter(Math.floor(column / 26) - 1) + last
}

/** A1-style name of a field; row and column count from 0 here. */
export function cellName(row: number, column: number): string {
  return `${columnLetter(column)}${row + 1}`
}
