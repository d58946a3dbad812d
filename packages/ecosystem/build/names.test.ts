import { expect, test } from 'vitest'
import { layoutOf } from '../src/declare/index.ts'
import { processes } from '../src/processes/index.ts'
import { neededNames, termsAmong } from './names.ts'
import { namesIn, parse } from './parse.ts'

test('every term stands after those that it is made of, in whatever order they are declared', () => {
  for (const process of processes) {
    const layout = layoutOf(process)
    const needed = neededNames(
      layout,
      layout.fluxes.map(({ rate }) => parse(rate)),
    )
    const terms = termsAmong(layout, needed)
    const names = terms.map(({ name }) => name)
    for (const [k, { name, is }] of terms.entries())
      for (const inner of namesIn(parse(is)))
        expect(names.indexOf(inner), `${process.id}: ${inner} in ${name}`).toBeLessThan(k)
    expect(new Set(names).size).toBe(names.length)
  }
  expect(processes.length).toBeGreaterThan(20)
})
