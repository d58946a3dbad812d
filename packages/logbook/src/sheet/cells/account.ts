import type { Grid } from '../book/book.ts'
import { cellName } from '../book/cell-name.ts'
import type { OddCell, Sheet } from '../sheet.ts'

/** Where a cell stands. */
export interface Place {
  readonly sheet?: string
  readonly cell: string
}

/** "Mar!B7" in a workbook, "B7" in a file of text. */
export const placeName = ({ sheet, cell }: Place): string => (sheet === undefined ? cell : `${sheet}!${cell}`)

/** The end of every cell: read, listed with a reason, or waiting for an answer. A cell that was read may be pointed out besides. */
export class Account {
  readonly #read = new Set<string>()
  readonly #listed = new Set<string>()
  readonly #waits = new Set<string>()
  readonly #odd: OddCell[] = []

  read(place: Place): void {
    const name = placeName(place)
    if (!this.#listed.has(name) && !this.#waits.has(name)) this.#read.add(name)
  }

  /** Listed, and not read. */
  list(place: Place, asWritten: string, why: string, taken = 'left out'): void {
    const name = placeName(place)
    if (this.#listed.has(name)) return
    this.#read.delete(name)
    this.#waits.delete(name)
    this.#listed.add(name)
    this.#odd.push({ cell: name, asWritten, why, taken })
  }

  /** Neither read nor listed until a question is answered, which names it. */
  wait(place: Place): void {
    const name = placeName(place)
    if (this.#listed.has(name)) return
    this.#read.delete(name)
    this.#waits.add(name)
  }

  /** Read, and worth a look. */
  point(place: Place, asWritten: string, why: string, taken: string, likely?: string): void {
    this.#odd.push({ cell: placeName(place), asWritten, why, taken, ...(likely !== undefined && { likely }) })
  }

  /** Lists what nothing was made of, so that no cell is dropped in silence. */
  close(grids: readonly Grid[]): { readonly cells: Sheet['cells']; readonly odd: readonly OddCell[] } {
    let held = 0
    for (const { name: sheet, rows } of grids) {
      for (const [row, cells] of rows.entries()) {
        for (const [column, cell] of cells.entries()) {
          if (cell === undefined) continue
          held++
          const place = { ...(sheet !== undefined && { sheet }), cell: cellName(row, column) }
          const name = placeName(place)
          if (this.#read.has(name) || this.#listed.has(name) || this.#waits.has(name)) continue
          this.list(place, asWritten(cell), 'it belongs to no table of readings')
        }
      }
    }
    const [read, waiting, listed] = [this.#read.size, this.#waits.size, this.#listed.size]
    return { cells: { held, read, waiting, listed }, odd: this.#odd }
  }
}

/** A cell as the keeper wrote it: the formula, where there is one. */
export const asWritten = ({ text, formula }: { readonly text: string; readonly formula?: string }): string =>
  formula === undefined ? text : `=${formula}`
