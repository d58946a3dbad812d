import { readQuantities } from '../entries/reading.ts'
import { type Header, readHeader } from './read-header.ts'

/** Where the header stands and what each column is. */
export interface HeaderRow {
  readonly row: number
  readonly headers: readonly Header[]
  readonly layout: 'wide' | 'long'
}

/** Titles and remarks above the header seldom fill more than this. */
const rowsSearched = 30

/**
 * The first row with the most columns understood; it needs a date and either a quantity (wide) or a
 * parameter and a value (long: one reading a row).
 */
export function findHeaderRow(rows: readonly (readonly string[])[]): HeaderRow | undefined {
  let best: (HeaderRow & { readonly understood: number }) | undefined
  for (const [row, fields] of rows.slice(0, rowsSearched).entries()) {
    const headers = fields.map(readHeader)
    const has = (role: string): boolean => headers.some((header) => header.role === role)
    const quantities = headers.some(({ role }) => role in readQuantities)
    const layout = has('parameter') && has('value') ? 'long' : 'wide'
    if (!has('date') || (layout === 'wide' && !quantities)) continue
    const understood = headers.filter(({ role }) => role !== 'unknown').length
    if (best === undefined || understood > best.understood) best = { row, headers, layout, understood }
  }
  return best
}
