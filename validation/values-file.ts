/** The form of a file of check values: one published or reckoned value a row. */
import papa from 'papaparse'

export interface ValueRow {
  readonly id: string
  readonly quantity: string
  /** JSON as it stands in the file. */
  readonly inputs: string
  readonly expected: string
  readonly unit: string
  readonly tolerance: string
}

const columns = ['id', 'quantity', 'inputs', 'expected', 'unit', 'tolerance'] as const

/** The rows of a file, and what is wrong with the file as a whole; source and provenance are for people. */
export function readValues(text: string): {
  readonly rows: readonly ValueRow[]
  readonly wrong: readonly string[]
} {
  const { data, errors, meta } = papa.parse<Record<string, string | undefined>>(text, {
    header: true,
    delimiter: ',',
    skipEmptyLines: 'greedy',
    transformHeader: (name) => name.trim(),
  })
  const absent = columns.filter((column) => !(meta.fields ?? []).includes(column))
  const wrong = [
    ...absent.map((column) => `The file has no column "${column}". It needs ${columns.join(', ')}.`),
    ...errors.map(({ message, row }) => `${row === undefined ? 'File' : `Row ${row + 1}`}: ${message}.`),
  ]
  const cell = (row: Record<string, string | undefined>, column: string) => (row[column] ?? '').trim()
  const rows = data.map((row) => ({
    id: cell(row, 'id'),
    quantity: cell(row, 'quantity'),
    inputs: cell(row, 'inputs'),
    expected: cell(row, 'expected'),
    unit: cell(row, 'unit'),
    tolerance: cell(row, 'tolerance'),
  }))
  return { rows, wrong }
}
