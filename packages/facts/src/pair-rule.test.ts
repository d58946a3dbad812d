import { describe, expect, test } from 'vitest'
import {
  conditionsOf,
  type Grazer,
  grazer,
  grazers,
  neighbours,
  neighboursNamed,
  objections,
  pairRules,
} from './index.ts'
import { meant, whom } from './whom.ts'

const animal = (taxon: string): { readonly animal: Grazer } => {
  const found = grazer(taxon)
  if (!found) throw new Error(taxon)
  return { animal: found }
}
const company = (one: string, other: string) =>
  objections(animal(one), animal(other))
    .filter(({ rule }) => rule === 'never' || rule === 'only from volume')
    .map(({ rule, volume_L }) => volume_L ?? rule)

describe('who may live with whom', () => {
  test('two lawnmower blennies never', () => {
    expect(company('Salarias fasciatus', 'Salarias fasciatus')).toEqual(['never'])
  })

  test('two tangs from 475 L, two bristletooths from 700 L: the genus is told more closely than the group', () => {
    expect(company('Zebrasoma flavescens', 'Acanthurus triostegus')).toEqual([475])
    expect(company('Ctenochaetus strigosus', 'Ctenochaetus striatus')).toEqual([700])
  })

  test('two convict tangs from 1000 L, though their genus needs 1500 L', () => {
    expect(company('Acanthurus triostegus', 'Acanthurus triostegus')).toEqual([1000])
    expect(company('Acanthurus triostegus', 'Acanthurus coeruleus')).toEqual([1500])
  })

  test('the order of the two makes no difference', () => {
    for (const one of grazers())
      for (const other of grazers().slice(0, 20))
        expect(company(one.taxon, other.taxon)).toEqual(company(other.taxon, one.taxon))
  })

  test('snails and conchs mind nobody of their own', () => {
    expect(company('Trochus histrio', 'Cerithium litteratum')).toEqual([])
  })
})

describe('who goes in first', () => {
  const first = (one: string, other: string) =>
    objections(animal(one), animal(other)).flatMap(({ rule, first }) => (rule === 'order' ? [first] : []))

  test('a blenny settles before a tang, whichever is asked about first', () => {
    expect(first('Zebrasoma flavescens', 'Salarias fasciatus')).toEqual(['other'])
    expect(first('Salarias fasciatus', 'Zebrasoma flavescens')).toEqual(['one'])
  })

  test('the milder bristletooth settles before a sailfin', () => {
    expect(first('Ctenochaetus strigosus', 'Zebrasoma flavescens')).toEqual(['one'])
  })
})

describe('neighbours and conditions', () => {
  test('a lettuce slug never goes with a moon wrasse', () => {
    const [moon] = neighboursNamed('Thalassoma lunare')
    expect(objections(animal('Elysia crispata'), { neighbour: moon }).map(({ rule }) => rule)).toEqual([
      'never',
    ])
  })

  test('a slate pencil urchin never goes with corals that cannot flee', () => {
    const [corals] = neighboursNamed('zoanthids')
    expect(
      objections(animal('Eucidaris tribuloides'), { neighbour: corals }).map(({ rule }) => rule),
    ).toContain('never')
  })

  test('a fish is not barred by copper, a snail is', () => {
    const words = (taxon: string) => conditionsOf(animal(taxon).animal).map((one) => one.words)
    expect(words('Trochus histrio')).toContain('copper in the water or in the rock')
    expect(words('Zebrasoma flavescens')).not.toContain('copper in the water or in the rock')
    expect(words('Zebrasoma flavescens')).toContain('ammonia or nitrite above the limits')
  })

  test('every side of every rule is a state of the system, a row of the tables, or an animal of the catalogue', () => {
    const keys = new Set(neighbours().map(({ key }) => key))
    const roles = new Set<string>(neighbours().flatMap(({ threats }) => threats.map(({ role }) => role)))
    const about = (side: string): boolean => {
      const [word, name] = side.split(':', 2)
      if (word === 'condition') return true
      if (word === 'neighbour') return keys.has(name)
      if (word === 'role') return roles.has(name)
      return grazers().some((one) => meant({ ...whom(side), below_cm: 1e9 }, one) > 0)
    }
    expect(pairRules().flatMap(({ a, b }) => [a, b].filter((side) => !about(side)))).toEqual([])
  })

  test('a rule names a volume or who is first exactly where it needs one', () => {
    expect(
      pairRules().filter(
        ({ rule, volume_L, first }) =>
          (rule === 'only from volume') !== (volume_L !== undefined) ||
          (rule === 'order') !== (first !== undefined),
      ),
    ).toEqual([])
  })
})
