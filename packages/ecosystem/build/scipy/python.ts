import type { Dialect } from '../scripted-source.ts'

const indented = (lines: readonly string[]): readonly string[] =>
  [...lines, 'return'].map((line) => `    ${line}`)

/** Python with NumPy. */
export const python: Dialect = {
  head: ['import numpy as np', 'from forms import *'],
  identifier: (name) => `_${name.replace('$', 'carried')}`,
  inputs: (vector, k) => `${vector}[ix[:, ${k}]]`,
  volume: 's[0]',
  gather: (name, body, sums) => [
    `def gather_${name}(y, s, p, g, ix, gx):`,
    ...indented([...body, ...sums.map((sum, k) => `np.add.at(g, gx[:, ${k}], ${sum})`)]),
  ],
  rates: (name, body, rates) => [
    `def rates_${name}(y, s, p, g, ix, out):`,
    ...indented([...body, ...rates.map((rate, k) => `out[:, ${k}] = ${rate}`)]),
  ],
  list: (name, items) => `${name} = [${items.join(', ')}]`,
  pair: (gather, rates) => `(${gather}, ${rates})`,
}
