import fc from 'fast-check'
import { expect, test } from 'vitest'

import { jsonFault } from './json-fault.ts'

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text)
    return true
  } catch {
    return false
  }
}

test('a fault is found exactly where the engine refuses the text', () => {
  const damaged = fc
    .tuple(fc.json(), fc.nat(), fc.constantFrom('', ',', '"', '}', ']', ':', '\\', '1', 'x', '\n', ' '))
    .map(
      ([text, at, put]) =>
        text.slice(0, at % (text.length + 1)) + put + text.slice((at % (text.length + 1)) + 1),
    )
  const texts = fc.oneof(fc.json(), fc.string(), damaged)
  fc.assert(
    fc.property(texts, (text) => (jsonFault(text) === undefined) === isJson(text)),
    { numRuns: 2000 },
  )
})

test('line and column are those that an editor shows', () => {
  expect(jsonFault('{\n  "a": 1\n  "b": 2\n}')).toEqual({ line: 3, column: 3, found: '""b": 2"' })
  expect(jsonFault('')).toEqual({ line: 1, column: 1, found: 'the end of the file' })
})
