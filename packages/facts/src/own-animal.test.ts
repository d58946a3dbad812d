import { expect, test } from 'vitest'
import { consumptionId, mortalityId, needId } from './grazer-facts.ts'
import type { OwnAnimal } from './own-animal.ts'
import { catalogueAlone, factsOfSystem } from './own-fact.ts'
import { objections } from './pair-rule.ts'

const model = 'Salarias fasciatus'
const like = { taxon: 'Grey blenny', like: model }
const known = (taxon: string, here = catalogueAlone) => {
  const animal = here.grazer(taxon)
  if (!animal) throw new Error(taxon)
  return animal
}

test('an animal of the keeper’s own is in all as the one it is like, but for its name', () => {
  const here = factsOfSystem([], [like])
  expect(here.remarks).toEqual([])
  const { taxon, like: of, tradeName, ...rest } = known('Grey blenny', here)
  expect([taxon, of, tradeName]).toEqual(['Grey blenny', model, 'Grey blenny'])
  const { taxon: _, tradeName: __, ...same } = known(model)
  expect(rest).toEqual(same)
  for (const id of [consumptionId, needId, mortalityId])
    expect(here.fact(id('Grey blenny'))).toMatchObject({ typical: here.typical(id(model)) })
  expect(here.taste('Grey blenny', 'hair_green')).toEqual(catalogueAlone.taste(model, 'hair_green'))
  expect(here.grazers()).toHaveLength(catalogueAlone.grazers().length + 1)
})

test('it keeps company as the one it is like does', () => {
  const here = factsOfSystem([], [like])
  const [own, first] = [known('Grey blenny', here), known(model)]
  expect(objections({ animal: own }, { animal: first }).map(({ by }) => by)).toEqual(
    objections({ animal: first }, { animal: first }).map(({ by }) => by),
  )
})

test('what is told of it stands in the place of that, and what it eats and needs goes with its mass', () => {
  const half = known(model).wetMass_g / 2
  const here = factsOfSystem(
    [],
    [{ ...like, wet_mass_g: half, least_volume_L: 1000, tastes: { bubble: 0.9 }, lost_in_a_year: 0.5 }],
  )
  const animal = known('Grey blenny', here)
  expect(here.taste('Grey blenny', 'bubble').preference).toBe(0.9)
  expect(here.taste('Grey blenny', 'hair_green')).toEqual(catalogueAlone.taste(model, 'hair_green'))
  expect(animal.volume_L).toEqual({ least: 1000, comfortable: 1000 })
  for (const id of [consumptionId, needId])
    expect(here.typical(id('Grey blenny'))).toBeCloseTo(here.typical(id(model)) / 2, 9)
  expect(here.typical(mortalityId('Grey blenny'))).toBeCloseTo(Math.LN2 / 365, 9)
  const told = factsOfSystem([], [{ ...like, eats_g_per_day: 0.4, needs_g_per_day: 0.1 }])
  expect(told.typical(consumptionId('Grey blenny'))).toBe(0.4)
  expect(told.typical(needId('Grey blenny'))).toBeCloseTo(0.1, 9)
})

test('what is told of warmth, length and caution stands too, and a warmest under the coldest is refused', () => {
  const snail = 'Trochus histrio'
  const of = (told: Partial<OwnAnimal>) => factsOfSystem([], [{ ...like, like: snail, ...told }])
  const { reefSafe, temperature_C } = known(snail)
  expect(reefSafe).toBe('yes')
  const warmest = temperature_C.best - 1
  const told = { caution: 'Knocks frags over', warmest_C: warmest, least_length_cm: 90 }
  expect(known('Grey blenny', of(told))).toMatchObject({
    reefSafe: 'with caution',
    reefSafeReason: 'Knocks frags over',
    leastLength_cm: 90,
    temperature_C: { min: temperature_C.min, best: warmest, max: warmest },
  })
  expect(known('Grey blenny', of({ reef_safe: 'no' })).reefSafe).toBe('no')
  expect(known('Grey blenny', of({ reef_safe: 'yes', caution: 'None' })).reefSafe).toBe('yes')
  expect(of({ warmest_C: 10 }).remarks).toEqual([
    expect.stringMatching(/\(own animals 1, warmest\): it would live from \d+ °C on and to 10 °C\./),
  ])
  expect(of({ warmest_C: 10 }).grazer('Grey blenny')).toBeUndefined()
})

test('what cannot be used is said, and the rest holds', () => {
  const { remarks, grazer } = factsOfSystem(
    [],
    [
      { taxon: 'Nobody', like: 'Salarias nobodyi' },
      { taxon: 'salarias fasciatus', like: model },
      { ...like, tastes: { hair: 1 } },
      like,
    ],
  )
  expect(remarks).toHaveLength(4)
  expect(remarks[0]).toMatch(
    /animal Nobody is not used \(own animals 1, like\): "Salarias nobodyi" is no grazer of the catalogue\. The nearest are .*Salarias fasciatus/,
  )
  expect(remarks[1]).toContain('(own animals 2, taxon): "salarias fasciatus" is the name of another')
  expect(remarks[2]).toMatch(/\(own animals 3, tastes, hair\): "hair" is no food .* One of .*hair_green/)
  expect(remarks[3]).toContain('(own animals 4, taxon): "Grey blenny" is the name of another')
  expect(grazer('Nobody')).toBeUndefined()
  expect(grazer('Grey blenny')).toBeDefined()
})
