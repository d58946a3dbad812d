import { expect, test } from 'vitest'
import { weakest } from './index.ts'

test('the weakest facts are estimates, widest first, each with a word on how it was made', () => {
  const list = weakest(30)
  expect(list.length).toBe(30)
  for (const one of list) {
    expect(one.provenance).toBe('estimate')
    expect(one.note).toBeTruthy()
    expect(one.aside).toBeUndefined()
  }
  expect(list[0].high / list[0].low).toBeGreaterThanOrEqual(list[29].high / list[29].low)
  expect(weakest(3)).toEqual(list.slice(0, 3))
})
