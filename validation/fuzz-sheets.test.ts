import { expect, test } from 'vitest'

import { lossOf, sheetsToMutate } from './fuzz-sheets.ts'
import { drawsOf, mutatedText } from './imports/mutate.ts'

test('sheets that were cut, shuffled and scribbled in lose no cell', () => {
  const sources = sheetsToMutate()
  expect(sources).toHaveLength(32)
  const losses = Array.from({ length: 160 }, (_, seed) => {
    const source = sources[seed % sources.length]
    return source && lossOf(source, seed)
  })
  expect(losses.filter((loss) => loss !== undefined)).toEqual([])
})

test('a seed gives the same sheet again, and another seed another one', () => {
  const text = 'Date,NO3 (mg/L)\n2026-01-04,5\n2026-01-11,6\n'
  const of = (seed: number): string => mutatedText(text, drawsOf(seed))
  expect(of(7)).toBe(of(7))
  expect(new Set(Array.from({ length: 40 }, (_, seed) => of(seed))).size).toBeGreaterThan(25)
})
