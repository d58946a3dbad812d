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

test('the least sure stand first: estimates before what was read, of these the widest band, and last what no formula reads', () => {
  const list = found({ ...any, order: 'least sure first' })
  const first = list.findIndex(({ provenance }) => provenance !== 'estimate')
  const asides = list.findIndex(({ aside }) => aside !== undefined)
  expect(first).toBeGreaterThan(1)
  expect(asides).toBeGreaterThan(first)
  expect(list.slice(first, asides).some(({ provenance }) => provenance === 'estimate')).toBe(false)
  expect(list.slice(asides).every(({ aside }) => aside !== undefined)).toBe(true)
  const widths = list.slice(0, first).map(width)
  expect(widths).toEqual(widths.toSorted((a, b) => (a === b ? 0 : b > a ? 1 : -1)))
  expect(list.at(-1)?.provenance).toBe('read')
})
