import { expect, test } from 'vitest'
import { fact } from './catalogue.ts'
import { factsOfSystem, type OwnFact } from './own-fact.ts'

const own = (parts: Partial<OwnFact> = {}): OwnFact => ({
  fact: 'foam.k.tank',
  low: 1,
  typical: 2,
  high: 3,
  unit: 'd⁻¹',
  reason: 'measured',
  ...parts,
})

test('what the keeper knows of a fact stands in the place of the catalogue, and the rest stays', () => {
  const here = factsOfSystem([own()])
  expect(here.fact('foam.k.tank')).toEqual({ ...fact('foam.k.tank'), low: 1, typical: 2, high: 3 })
  expect(here.fact('nit.q10')).toBe(fact('nit.q10'))
  expect(here.remarks).toEqual([])
})

test('another unit of the same kind is turned into that of the catalogue', () => {
  const here = factsOfSystem([own({ unit: 'h⁻¹' })])
  expect(here.fact('foam.k.tank').typical).toBeCloseTo(48, 9)
})

test('a value that cannot be used says why, and the catalogue holds', () => {
  const cases: readonly (readonly [Partial<OwnFact>, string])[] = [
    [{ fact: 'foam.k.tnk' }, 'the catalogue has no such fact. The nearest are foam.k.tank'],
    [{ unit: 'L' }, 'it is given in L, and the fact is in d⁻¹.'],
    [{ unit: 'blob' }, 'it is given in blob, and the fact is in d⁻¹.'],
    [{ low: -1 }, 'the fact cannot be below 0.'],
    [{ low: 4 }, 'low, typical and high do not rise.'],
  ]
  for (const [parts, why] of cases) {
    const here = factsOfSystem([own(parts)])
    expect(here.remarks).toHaveLength(1)
    expect(here.remarks[0]).toContain(why)
    expect(here.own.size).toBe(0)
    expect(here.fact('foam.k.tank')).toBe(fact('foam.k.tank'))
  }
})
