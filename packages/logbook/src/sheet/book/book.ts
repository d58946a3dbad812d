/** A cell with something in it. */
export interface Cell {
  /** As a person sees it, without spaces around. */
  readonly text: string
  /** Where the file says that it is a number. */
  readonly number?: number
  /** Where the file says that it is a date: ISO, with HH:MM where a time of day is in it. */
  readonly date?: string
  readonly time?: string
  /** A formula, without the sign of equality; `text` is its stored result, or empty where none is stored. */
  readonly formula?: string
}

/** A rectangle of cells, counted from 0, both ends within. */
export interface Area {
  readonly top: number
  readonly left: number
  readonly bottom: number
  readonly right: number
}

/** One sheet of a file: rows of cells, undefined where a cell is empty. */
export interface Grid {
  /** Name of the sheet; absent in a file of text. */
  readonly name?: string
  readonly rows: readonly (readonly (Cell | undefined)[])[]
  readonly merged: readonly Area[]
}

/** What a file holds, before anything is understood of it. */
export interface Book {
  readonly kind: 'text' | 'workbook'
  readonly encoding: string
  /** Between the fields of a file of text; empty in a workbook. */
  readonly delimiter: string
  readonly grids: readonly Grid[]
}

/** What a file may hold; more is refused and not cut off. */
export const limits = {
  bytes: 64 * 1024 * 1024,
  /** A spreadsheet program's own limits are 16,384 columns and 1,048,576 rows. */
  columns: 2000,
  rows: 1_048_576,
  /** Places up to the last cell of each row, empty ones counted. */
  cells: 12_000_000,
  /** With something in them: so many take some 3 GB from the file to the log. */
  filled: 2_000_000,
  characters: 20_000,
  sheets: 500,
  mergedAreas: 20_000,
  /** Of a workbook, unpacked: in all, and of one entry against what it was packed to. */
  unpackedBytes: 512 * 1024 * 1024,
  entries: 5000,
} as const

/** Why a file is not read; the words are in `refusals.ts`. */
export type BookProblem =
  | { readonly code: 'empty-file' }
  | { readonly code: 'not-text'; readonly looksLike?: string }
  | { readonly code: 'no-columns' }
  | { readonly code: 'too-large'; readonly what: string; readonly most: string }
  | { readonly code: 'broken-workbook'; readonly why: string }

/** Thrown inside this folder only; `readBook` gives it back as an answer. */
export class Unreadable extends Error {
  readonly problem: BookProblem

  constructor(problem: BookProblem) {
    super(problem.code)
    this.problem = problem
  }
}

export const tooLarge = (what: string, most: number): Unreadable =>
  new Unreadable({ code: 'too-large', what, most: most.toLocaleString('en') })

export const filledCells = 'cells with something in them'
