import type { Dialect } from '../scripted-source.ts'

const braced = (lines: readonly string[]): readonly string[] => [...lines.map((line) => `  ${line}`), '}']

/** R; its places count from 1, as those of the numbers do once they are read. */
export const r: Dialect = {
  head: [],
  identifier: (name) => `.${name.replace('$', 'carried')}`,
  inputs: (vector, k) => `${vector}[ix[, ${k + 1}]]`,
  volume: 's[1]',
  gather: (name, body, sums) => [
    `gather_${name} = function(y, s, p, g, ix, gx) {`,
    ...braced([...body, ...sums.map((sum, k) => `g = added(g, gx[, ${k + 1}], ${sum})`), 'g']),
  ],
  rates: (name, body, rates) => [
    `rates_${name} = function(y, s, p, g, ix) {`,
    ...braced([...body, `rows_of(${['nrow(ix)', ...rates].join(', ')})`]),
  ],
  list: (name, items) => `${name} = list(${items.join(', ')})`,
  pair: (gather, rates) => `list(${gather}, ${rates})`,
}

/** Data as R reads them. */
export function inR(value: unknown): string {
  if (Array.isArray(value))
    return value.every((item) => typeof item === 'number')
      ? `c(${value.join(', ')})`
      : `list(${value.map(inR).join(', ')})`
  if (typeof value === 'object' && value !== null)
    return `list(${Object.entries(value)
      .map(([name, inner]) => `${name} = ${inR(inner)}`)
      .join(', ')})`
  return JSON.stringify(value)
}
