import { expect, test } from 'vitest'
import { fact, facts, factsHolding, familyOf } from './index.ts'

const idsOf = (words: string) => factsHolding(words).map(({ id }) => id)

test('a fact is found by words of its title, id, family, conditions, note and source, whatever their case', () => {
  expect(fact('foam.k.tank').source).toBe('feldman-2009')
  for (const words of [
    'skimmable removal',
    'FOAM.K.TANK',
    'foam fractionation skimmable',
    'Feldman 2009 organics',
  ])
    expect(idsOf(words), words).toContain('foam.k.tank')
  expect(idsOf('aluminium')).toContain('al.qmax')
})

test('every word must be found, and without a word all facts in use are', () => {
  expect(factsHolding('skimmable no-such-word')).toEqual([])
  expect(factsHolding(' ').length).toBe(facts().filter(({ retired }) => !retired).length)
})

test('every fact belongs to a family that has a name in words', () => {
  const nameless = facts().filter(({ id }) => !/^[A-Z]/.test(familyOf(id)))
  expect(nameless.map(({ id }) => id)).toEqual([])
})
