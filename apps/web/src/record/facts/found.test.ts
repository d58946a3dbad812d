import { expect, test } from 'vitest'
import { familiesThere, found, width } from './found.ts'

const any = { words: '', family: '', order: 'by family' } as const

test('a fact is found by words of its title, its id and its source, in any order', () => {
  for (const words of ['skimmable removal', 'foam.k.tank', 'Feldman organics'])
    expect(
      found({ ...any, words }).map(({ id }) => id),
      words,
    ).toContain('foam.k.tank')
  expect(found({ ...any, words: 'skimmable no-such-word' })).toEqual([])
})

test('every family has its facts, and together they are all', () => {
  const sizes = familiesThere.map((family) => found({ ...any, family }).length)
  expect(Math.min(...sizes)).toBeGreaterThan(0)
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(found(any).length)
})

test('the least sure stand first: estimates before what was read, and of these the widest band', () => {
  const list = found({ ...any, order: 'least sure first' })
  const first = list.findIndex(({ provenance }) => provenance !== 'estimate')
  expect(first).toBeGreaterThan(1)
  expect(list.slice(first).some(({ provenance }) => provenance === 'estimate')).toBe(false)
  const widths = list.slice(0, first).map(width)
  expect(widths).toEqual(widths.toSorted((a, b) => (a === b ? 0 : b > a ? 1 : -1)))
  expect(list.at(-1)?.provenance).toBe('read')
})
