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
  // read letter by letter: a long sheet asks this for every cell
  let [at, column, row] = [skipped(name, 0), 0, 0]
  const letters = at
  for (; isBetween(name, at, 65, 90); at++) column = column * 26 + name.charCodeAt(at) - 64
  const isColumn = at > letters && at - letters <= 3
  at = skipped(name, at)
  const digits = at
  for (; isBetween(name, at, 48, 57); at++) row = row * 10 + name.charCodeAt(at) - 48
  const isRow = at > digits && at - digits <= 7
  return isColumn && isRow && at === name.length ? { row: row - 1, column: column - 1 } : undefined
}

/** Behind the dollar sign that fixes a row or a column in a formula. */
const skipped = (name: string, at: number): number => (name.charCodeAt(at) === 36 ? at + 1 : at)

function isBetween(name: string, at: number, first: number, last: number): boolean {
  const code = name.charCodeAt(at)
  return code >= first && code <= last
}
