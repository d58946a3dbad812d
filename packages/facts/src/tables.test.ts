import { describe, expect, test } from 'vitest'
import {
  algaeKind,
  algaeKinds,
  consumptionId,
  consumptionRules,
  coralBand,
  coralBands,
  fact,
  feedKind,
  feedKinds,
  grazer,
  grazers,
  mouth,
  mouths,
  patchShares,
  surfaceKind,
  surfaceKinds,
  taste,
} from './index.ts'

const ranges = [
  'growth',
  'halfSaturationN',
  'halfSaturationP',
  'lightSaturation',
  'fullCoverMass',
  'tissueN',
  'tissueP',
  'shed',
  'stubble',
] as const

describe('kinds of algae', () => {
  test.each(algaeKinds().map(({ key }) => key))('%s has its numbers in order and as facts', (key) => {
    const kind = algaeKind(key)
    for (const field of ranges) {
      expect(kind[field].low, field).toBeLessThan(kind[field].typical)
      expect(kind[field].typical, field).toBeLessThan(kind[field].high)
    }
    expect(fact(`algae.${key}.growth`)).toMatchObject({ ...kind.growth, unit: 'd⁻¹' })
    expect(fact(`algae.${key}.quota_N_min`).typical).toBe(kind.tissueN.low)
    expect(fact(`algae.${key}.quota_P_max`).typical).toBe(kind.tissueP.high)
    expect(kind.stubble.typical).toBeLessThan(kind.fullCoverMass.typical)
    expect(algaeKind(kind.dietKey).key).toBe(kind.dietKey)
  })

  test('a kind misspelt is answered with the nearest', () => {
    expect(() => algaeKind('hair_gren')).toThrow('hair_green')
  })
})

describe('grazers', () => {
  test('each has its consumption as a fact, a rule and a mouth of the lists', () => {
    const rules = new Set(consumptionRules().map(({ key }) => key))
    for (const one of grazers()) {
      expect(fact(consumptionId(one.taxon))).toMatchObject({ ...one.consumption, unit: 'g d⁻¹' })
      expect(rules).toContain(one.consumptionRule)
      expect(mouth(one.mouth).key).toBe(one.mouth)
      expect(fact(`grazing.appetite_left.${one.appetite}`).high).toBeLessThanOrEqual(1)
    }
  })

  test('each lives between its temperatures and in its comfortable volume at least', () => {
    const wrong = grazers().filter(
      ({ temperature_C: t, volume_L: v }) => !(t.min < t.best && t.best < t.max && v.least <= v.comfortable),
    )
    expect(wrong.map(({ taxon }) => taxon)).toEqual([])
  })

  test('each is kept by the water, by the sand or by the tank, in one of these ways', () => {
    const wrong = grazers().filter(
      ({ stocking: { per100L, perSand_m2, perTank, words } }) =>
        words !== 'not advised' &&
        [per100L, perSand_m2, perTank].filter((way) => way !== undefined).length !== 1,
    )
    expect(wrong.map(({ taxon }) => taxon)).toEqual([])
    expect(grazer('Trochus histrio')?.stocking.per100L).toEqual({ low: 2, high: 4 })
    expect(grazer('Conomurex luhuanus')?.stocking.perSand_m2).toEqual({ low: 5, high: 10 })
  })

  test('a taxon the catalogue does not know has no row', () => {
    expect(grazer('Turbo imaginarius')).toBeUndefined()
  })

  test('bristletooths comb and other tangs crop', () => {
    expect(grazer('Ctenochaetus striatus')?.mouth).toBe('bristletooth')
    expect(grazer('Zebrasoma flavescens')?.mouth).toBe('cropper')
  })
})

describe('tastes', () => {
  test('every grazer has a taste for every kind, between 0 and 1', () => {
    for (const { taxon } of grazers()) {
      for (const { key } of algaeKinds()) {
        const { preference } = taste(taxon, key)
        expect(preference, `${taxon} on ${key}`).toBeGreaterThanOrEqual(0)
        expect(preference, `${taxon} on ${key}`).toBeLessThanOrEqual(1)
      }
    }
  })

  test('a kind without own tastes takes those of its relative times the factor', () => {
    const turf = taste('Zebrasoma flavescens', 'turf').preference
    expect(taste('Zebrasoma flavescens', 'red_turf')).toMatchObject({
      preference: turf / 2,
      derivedFrom: 'turf',
      provenance: 'estimate',
    })
  })

  test('an animal that is no grazer of the catalogue eats no algae', () => {
    expect(taste('Amphiprion ocellaris', 'hair_green').preference).toBe(0)
  })

  test('a kind nobody knows is refused', () => {
    expect(() => taste('Trochus histrio', 'moss')).toThrow('Kind of algae: "moss"')
  })

  test('tastes copied from a relative name one that has a row', () => {
    const copies = grazers().flatMap(({ taxon }) =>
      algaeKinds().map(({ key }) => taste(taxon, key).copiedFrom),
    )
    const named = new Set(copies.filter((taxon) => taxon !== undefined))
    expect(named.size).toBeGreaterThan(5)
    expect([...named].filter((taxon) => grazer(taxon) === undefined)).toEqual([])
  })
})

describe('surfaces', () => {
  const patches = ['open', 'half_hidden', 'hidden'] as const
  const typical = (id: string): number => fact(id).typical

  test.each(surfaceKinds().map(({ key }) => key))('%s is shared out whole and has a mass transfer', (key) => {
    const shares = patchShares(key, typical)
    expect(patches.reduce((sum, patch) => sum + shares[patch], 0)).toBeCloseTo(1, 12)
    expect(fact(surfaceKind(key).transferShare).unit).toBe('1')
  })

  test('the mean reach of the crew is kept within 0.01 by the patches of every kind of surface', () => {
    const idle = new Set(['snail_scavenger', 'shrimp_non_grazer', 'brittle_star', 'pod'])
    const crew = grazers().filter(({ group, reefSafe }) => reefSafe !== 'no' && !idle.has(group))
    for (const { key } of surfaceKinds()) {
      const shares = patchShares(key, typical)
      let reached = 0
      let told = 0
      for (const { reach } of crew) {
        let before = 0
        for (const patch of patches) {
          if (reach[key] >= before + shares[patch] / 2) reached += shares[patch]
          before += shares[patch]
        }
        told += reach[key]
      }
      expect(Math.abs(reached - told) / crew.length, key).toBeLessThan(0.01)
    }
  })

  test('own shares that are too large leave no part of a surface twice or less than nothing', () => {
    const shares = patchShares('glass', () => 0.8)
    expect(shares.hidden).toBe(0.8)
    expect(shares.half_hidden).toBeCloseTo(0.2, 12)
    expect(shares.open).toBe(0)
  })
})

describe('mouths, feeds and bands', () => {
  test('every mouth names facts of heights, densities and shares', () => {
    for (const one of mouths()) {
      expect(fact(one.halfSaturation).unit).toBe('g m⁻²')
      expect(fact(one.fullHeight).typical).toBeLessThan(fact(one.floorHeight).typical)
      expect(fact(one.floorShare).unit).toBe('1')
    }
  })

  test('every feed has N, P and C in its unit, and a dry share where it is told of the dry', () => {
    for (const kind of feedKinds()) {
      expect([fact(kind.N).unit, fact(kind.P).unit, fact(kind.C).unit]).toEqual([
        'g N g⁻¹',
        'g P g⁻¹',
        'g C g⁻¹',
      ])
      expect(fact(kind.uneaten).high).toBeLessThan(1)
      expect(kind.dry === undefined).toBe(kind.basis === 'as fed')
    }
  })

  test('a feed goes by the words on its pack, and by no other', () => {
    expect(feedKind('Frozen Mysis')?.key).toBe('mysis')
    expect(feedKind('chocolate')).toBeUndefined()
  })

  test('no two feeds and no two bands go by one name', () => {
    for (const names of [
      feedKinds().flatMap((kind) => kind.names),
      coralBands().flatMap((band) => band.names),
    ]) {
      expect(new Set(names).size).toBe(names.length)
    }
  })

  test('a mixed reef is kept at 2 to 15 mg/L nitrate and 0.03 to 0.12 mg/L phosphate (common practice)', () => {
    const { nitrate, phosphate } = coralBand('mixed reef') ?? {}
    expect(fact(nitrate ?? '')).toMatchObject({ low: 2, high: 15, unit: 'mg NO3 L⁻¹' })
    expect(fact(phosphate ?? '')).toMatchObject({ low: 0.03, high: 0.12, unit: 'mg PO4 L⁻¹' })
  })
})
