import { type Account, asWritten, placeName } from '../cells/account.ts'
import type { FoundValue } from '../cells/gathered.ts'

/**
 * Parts formulas that reckon a reading anew from those that are a keeper's way to write one. What is reckoned
 * from a cell that is read is no second reading; a formula without a stored result is no reading at all.
 */
export function withoutReckoned(values: readonly FoundValue[], account: Account): readonly FoundValue[] {
  // most sheets have no formula, and a long one need not name all its cells
  if (values.every(({ content }) => content.formula === undefined)) return values
  const read = new Set(values.map(placeName))
  return values.filter((value) => {
    const { formula, text } = value.content
    if (formula === undefined) return true
    const inSheet = value.sheet === undefined ? '' : `${value.sheet}!`
    const from = referred(formula).find((cell) => read.has(`${inSheet}${cell}`))
    if (from !== undefined)
      account.list(value, asWritten(value.content), `a formula: reckoned from ${from}, no second reading`)
    else if (/\b[A-Z]{2,}\w*\(/i.test(formula) && /:/.test(formula))
      account.list(value, asWritten(value.content), 'a formula over several cells, no reading')
    else if (text === '') account.list(value, asWritten(value.content), 'a formula without a stored result')
    else {
      account.point(value, asWritten(value.content), 'a formula', `its stored result ${text} is read`)
      return true
    }
    return false
  })
}

/** The cells of its own sheet that a formula names. */
function referred(formula: string): readonly string[] {
  const words = formula.replace(/"[^"]*"/g, '').matchAll(/(?<![\w!.])\$?([A-Z]{1,3})\$?(\d{1,7})(?![\w(])/g)
  return [...words].map(([, column, row]) => `${column}${row}`)
}
