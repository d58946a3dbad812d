/** Column letters as spreadsheets write them: A, B … Z, AA; the column counts from 0. */
export function columnLetter(column: number): string {
  const last = String.fromCharCode(65 + (column % 26))
  return column < 26 ? last : columnLetter(Math.floor(column / 26) - 1) + last
}

/** A1-style name of a cell; row and column count from 0. */
export function cellName(row: number, column: number): string {
  return `${columnLetter(column)}${row + 1}`
}

/** Row and column, from 0, of a name such as B7; undefined where it is none. */
export function placeOf(name: string): { readonly row: number; readonly column: number } | undefined {
  const [, letters, digits] = /^\$?([A-Z]{1,3})\$?(\d{1,7})$/.exec(name) ?? []
  if (letters === undefined || digits === undefined) return undefined
  let column = 0
  for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64
  return { row: Number(digits) - 1, column: column - 1 }
}
