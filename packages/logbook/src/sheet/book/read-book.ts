import { type Book, type BookProblem, limits, tooLarge, Unreadable } from './book.ts'
import { decode } from './decode.ts'
import { delimitedGrid } from './delimited.ts'
import { workbookGrids } from './workbook.ts'

export type BookRead =
  | { readonly ok: true; readonly book: Book }
  | { readonly ok: false; readonly problem: BookProblem }

/** The cells of a file, or why it is not read; a workbook is told by its first bytes, not by its name. */
export function readBook(bytes: Uint8Array): BookRead {
  try {
    return { ok: true, book: bookOf(bytes) }
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, problem: error.problem }
    throw error
  }
}

function bookOf(bytes: Uint8Array): Book {
  if (bytes.length === 0) throw new Unreadable({ code: 'empty-file' })
  if (bytes.length > limits.bytes) throw tooLarge('bytes', limits.bytes)
  const isArchive = bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4
  if (isArchive) return { kind: 'workbook', encoding: 'XLSX', delimiter: '', grids: workbookGrids(bytes) }
  const { text, encoding } = decode(bytes)
  const { grid, delimiter } = delimitedGrid(text)
  return { kind: 'text', encoding, delimiter, grids: [grid] }
}
