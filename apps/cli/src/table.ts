/** A column of a table for people: its heading with the unit, and where its cells stand. */
export interface Column {
  readonly heading: string
  readonly stands?: 'left' | 'right'
}

/** Rows under their headings, aligned; two spaces between columns, nothing at the end of a line. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const headings = columns.map(({ heading }) => heading)
  const widths = columns.map((_, at) => Math.max(...[headings, ...rows].map((row) => width(row[at] ?? ''))))
  const line = (row: readonly string[]): string =>
    columns
      .map(({ stands }, at) => {
        const cell = row[at] ?? ''
        const space = ' '.repeat((widths[at] ?? 0) - width(cell))
        return stands === 'right' ? space + cell : cell + space
      })
      .join('  ')
      .trimEnd()
  return [headings, ...rows].map(line).join('\n')
}

const width = (cell: string): number => [...cell].length
