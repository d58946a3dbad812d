/** A set of cells by name, such as "Mar!B7" or "B7". */
export type Region = (cell: string) => boolean

interface At {
  readonly sheet: string
  readonly column: number
  readonly row: number
}

/** The cells that a place in words is about: "columns B, C", "B12:B17", "from row 9", "column D of each sheet". */
export function regionOf(where: string): Region {
  const sheet = /^(.+)!/.exec(where)?.[1] ?? ''
  const text = where.slice(sheet === '' ? 0 : sheet.length + 1)
  const parts: Region[] = []
  for (const [, from = '', to = from] of text.matchAll(/\b([A-Z]{1,3}\d+)(?:\s*[:-]\s*([A-Z]{1,3}\d+))?/g)) {
    const [start, end] = [at(from), at(to)]
    parts.push((cell) => {
      const { column, row } = at(cell)
      return column >= start.column && column <= end.column && row >= start.row && row <= end.row
    })
  }
  const columns = /\bcolumns?\s+((?:[A-Z]{1,3}\b(?:\s*(?:,|and|to|-)\s*)?)+)/.exec(text)?.[1]
  if (columns !== undefined) {
    const letters = [...columns.matchAll(/[A-Z]{1,3}\b/g)].map(([letter]) => at(`${letter}1`).column)
    const [first = 0, last = first] = letters
    const isSpan = /-|to/.test(columns)
    parts.push((cell) => {
      const { column } = at(cell)
      return isSpan ? column >= first && column <= last : letters.includes(column)
    })
  }
  const rows = /\b(from )?rows?\s+(\d+)(?:\s*(?:-|to)\s*(\d+))?((?:\s*(?:,|and)\s*\d+)*)/.exec(text)
  if (rows !== null) {
    const [, open, from, to, others = ''] = rows
    const more = [...others.matchAll(/\d+/g)].map(Number)
    const last = open === undefined ? Number(to ?? from) : Number.POSITIVE_INFINITY
    parts.push((cell) => {
      const { row } = at(cell)
      return (row >= Number(from) && row <= last) || more.includes(row)
    })
  }
  // a place that names no cells is the whole sheet
  const isInside: Region = parts.length === 0 ? () => true : (cell) => parts.some((part) => part(cell))
  return (cell) => (sheet === '' || at(cell).sheet === '' || at(cell).sheet === sheet) && isInside(cell)
}

function at(name: string): At {
  const [, sheet = '', letters = '', digits = ''] = /^(?:(.+)!)?([A-Z]{1,3})(\d+)$/.exec(name) ?? []
  let column = 0
  for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64
  return { sheet, column, row: Number(digits) }
}
