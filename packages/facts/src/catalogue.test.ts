import { parseUnit } from '@holdfast/quantities'
import { describe, expect, test } from 'vitest'
import { fact, facts, source, sources, UnknownKey } from './index.ts'

const provenances = new Set(['read', 'memory', 'common practice', 'estimate'])
const offenders = (wrong: (one: ReturnType<typeof fact>) => boolean) =>
  facts()
    .filter(wrong)
    .map((one) => one.id)

describe('every fact', () => {
  test('there are facts to look at', () => {
    expect(facts().length).toBeGreaterThan(300)
  })

  test('has an id of its own, written as a path', () => {
    const ids = facts().map((one) => one.id)
    expect(ids.filter((id, place) => ids.indexOf(id) !== place)).toEqual([])
    expect(
      ids.filter((id) => !/^[a-z][a-z0-9]*(_[a-z0-9]+)*(\.[a-zA-Z0-9]+(_[a-zA-Z0-9]+)*)+$/.test(id)),
    ).toEqual([])
  })

  test('has low, typical and high in that order, all finite', () => {
    expect(offenders(({ low, typical, high }) => !(low <= typical && typical <= high))).toEqual([])
    expect(offenders(({ low, high }) => !Number.isFinite(low) || !Number.isFinite(high))).toEqual([])
  })

  test('is an exact constant or has room on both sides of the middle', () => {
    expect(
      offenders(({ low, typical, high }) => low !== high && (low === typical || typical === high)),
    ).toEqual([])
  })

  test('is at least zero unless it says that it may be negative', () => {
    expect(offenders(({ low, signed }) => low < 0 && signed !== true)).toEqual([])
  })

  test('gives a share at exactly zero only where its low end is zero', () => {
    expect(offenders(({ low, zeroShare }) => zeroShare !== undefined && low !== 0)).toEqual([])
  })

  test('has a share of 1 at most where it is a share of something', () => {
    const shares = /_share|digest|retain|uneaten|dissolves|reject|wc\.ro|moisture|assimil/
    expect(
      offenders(
        ({ id, unit, high }) => unit === '1' && shares.test(id) && !id.startsWith('surface.') && high > 1,
      ),
    ).toEqual([])
  })

  test('names a source of the list, and only such', () => {
    const keys = new Set(sources().map(({ key }) => key))
    expect(offenders((one) => [one.source, ...(one.also ?? [])].some((key) => !keys.has(key)))).toEqual([])
  })

  test('says how it is known in one of four words', () => {
    expect(offenders(({ provenance }) => !provenances.has(provenance))).toEqual([])
  })

  test('says how it was made where it is an estimate', () => {
    expect(offenders(({ provenance, note }) => provenance === 'estimate' && !note)).toEqual([])
  })

  test('was read only where its source or one beside it was seen', () => {
    const seen = (key: string) => ['abstract', 'in full'].includes(source(key).seen)
    expect(
      offenders((one) => one.provenance === 'read' && ![one.source, ...(one.also ?? [])].some(seen)),
    ).toEqual([])
  })

  test('has a unit that is understood', () => {
    const unitOf = (unit: string) => {
      try {
        parseUnit(unit)
        return true
      } catch {
        return false
      }
    }
    expect(offenders(({ unit }) => !unitOf(unit))).toEqual([])
  })

  test('says why it stands aside in the middle of a sentence, and names only facts that there are', () => {
    expect(offenders(({ aside }) => aside !== undefined && !/^[a-z].*[^.]$/.test(aside))).toEqual([])
    const named = facts().flatMap(({ aside = '' }) => aside.match(/\b[a-z]\w*(\.\w+)+/g) ?? [])
    expect(named.length).toBeGreaterThan(10)
    expect(named.filter((id) => fact(id).aside !== undefined)).toEqual([])
  })

  test('names its follower where it is retired', () => {
    expect(offenders(({ retired, see }) => retired === true && see === undefined)).toEqual([])
    expect(facts().flatMap(({ see }) => (see === undefined ? [] : [fact(see).id]))).toEqual(
      facts().flatMap(({ see }) => (see === undefined ? [] : [see])),
    )
  })
})

describe('looking up', () => {
  test('a fact comes by its id', () => {
    expect(fact('foam.k.tank')).toMatchObject({ unit: 'd⁻¹', low: 0.2, typical: 0.8, high: 3 })
  })

  test('an id misspelt is answered with the nearest ones', () => {
    expect(() => fact('foam.k.tnak')).toThrow(
      /^Fact: "foam\.k\.tnak" is not in the catalogue\. Use one of the nearest: foam\.k\.tank, /,
    )
    try {
      fact('min.detritus.kfast')
    } catch (error) {
      expect(error).toBeInstanceOf(UnknownKey)
      expect((error as UnknownKey).issue).toMatchObject({
        code: 'unknown-fact',
        where: 'Fact',
        got: 'min.detritus.kfast',
      })
      expect((error as UnknownKey).issue.accepted[0]).toBe('min.detritus.k_fast')
    }
  })

  test('the beginning of an id finds what lies under it', () => {
    try {
      fact('sorb')
    } catch (error) {
      expect((error as UnknownKey).issue.accepted.every((id) => id.startsWith('sorb.'))).toBe(true)
    }
    expect.assertions(1)
  })

  test('a source comes by its key', () => {
    expect(source('polunin-brothers-1989')).toMatchObject({
      authors: 'Polunin & Brothers',
      year: 1989,
      seen: 'abstract',
    })
    expect(() => source('polunin')).toThrow('polunin-brothers-1989')
  })
})
