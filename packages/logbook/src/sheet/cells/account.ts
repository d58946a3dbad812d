import type { Grid } from '../book/book.ts'
import { cellName, placeOf } from '../book/cell-name.ts'
import type { OddCell, Sheet } from '../sheet.ts'

/** Where a cell stands. */
export interface Place {
  readonly sheet?: string
  readonly cell: string
}

/** "Mar!B7" in a workbook, "B7" in a file of text. */
export const placeName = ({ sheet, cell }: Place): string => (sheet === undefined ? cell : `${sheet}!${cell}`)

const ends = { none: 0, read: 1, waits: 2, listed: 3 } as const
type End = keyof typeof ends

/** One byte for each place of a sheet up to the last cell of its row. */
class Ends {
  readonly #starts: Uint32Array
  readonly #ends: Uint8Array

  constructor({ rows }: Grid) {
    this.#starts = new Uint32Array(rows.length + 1)
    for (const [at, row] of rows.entries()) this.#starts[at + 1] = (this.#starts[at] ?? 0) + row.length
    this.#ends = new Uint8Array(this.#starts[rows.length] ?? 0)
  }

  at(row: number, column: number): number {
    return this.#ends[(this.#starts[row] ?? 0) + column] ?? ends.none
  }

  set(row: number, column: number, end: End): void {
    this.#ends[(this.#starts[row] ?? 0) + column] = ends[end]
  }
}

/**
 * The end of every cell: read, listed with a reason, or waiting for an answer. A cell that was read may be
 * pointed out besides.
 */
export class Account {
  readonly #grids: readonly Grid[]
  readonly #ends: ReadonlyMap<string, Ends>
  readonly #odd: OddCell[] = []

  constructor(grids: readonly Grid[]) {
    this.#grids = grids
    this.#ends = new Map(grids.map((grid) => [grid.name ?? '', new Ends(grid)]))
  }

  read(place: Place): void {
    this.#end(place, 'read', ends.none)
  }

  /** Neither read nor listed until a question is answered, which names it. */
  wait(place: Place): void {
    this.#end(place, 'waits', ends.read)
  }

  /** Listed, and not read. */
  list(place: Place, asWritten: string, why: string, taken = 'left out'): void {
    if (this.#end(place, 'listed', ends.waits))
      this.#odd.push({ cell: placeName(place), asWritten, why, taken })
  }

  /** Read, and worth a look. */
  point(place: Place, asWritten: string, why: string, taken: string, likely?: string): void {
    this.#odd.push({ cell: placeName(place), asWritten, why, taken, ...(likely !== undefined && { likely }) })
  }

  /** Lists what nothing was made of, so that no cell is dropped in silence. */
  close(): { readonly cells: Sheet['cells']; readonly odd: readonly OddCell[] } {
    const counts = [0, 0, 0, 0]
    for (const { name: sheet, rows } of this.#grids) {
      const known = this.#ends.get(sheet ?? '')
      for (const [row, cells] of rows.entries()) {
        for (const [column, cell] of cells.entries()) {
          if (cell === undefined) continue
          const place = { ...(sheet !== undefined && { sheet }), cell: cellName(row, column) }
          if (known?.at(row, column) === ends.none)
            this.list(place, asWritten(cell), 'it belongs to no table of readings')
          const end = known?.at(row, column) ?? ends.none
          counts[end] = (counts[end] ?? 0) + 1
        }
      }
    }
    const [none = 0, read = 0, waiting = 0, listed = 0] = counts
    return { cells: { held: none + read + waiting + listed, read, waiting, listed }, odd: this.#odd }
  }

  /** What the keeper wrote into a cell, by its name as `placeName` gives it. */
  textOf(name: string): string {
    const [, sheet, cell = ''] = /^(?:(.*)!)?([^!]*)$/s.exec(name) ?? []
    const rows = this.#grids.find((grid) => grid.name === sheet)?.rows
    const place = placeOf(cell)
    const found = place && rows?.[place.row]?.[place.column]
    return found === undefined ? '' : asWritten(found)
  }

  /** A later end takes the place of one before it, never the other way. @returns whether it was set */
  #end({ sheet = '', cell }: Place, end: End, above: number): boolean {
    const [known, place] = [this.#ends.get(sheet), placeOf(cell)]
    if (known === undefined || place === undefined || known.at(place.row, place.column) > above) return false
    known.set(place.row, place.column, end)
    return true
  }
}

/** A cell as the keeper wrote it: the formula, where there is one. */
export const asWritten = ({ text, formula }: { readonly text: string; readonly formula?: string }): string =>
  formula === undefined ? text : `=${formula}`
