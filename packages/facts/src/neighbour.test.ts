import { describe, expect, test } from 'vitest'
import { exposed, fact, grazer, grazers, hunting, neighbours, neighboursNamed, predationId } from './index.ts'
import { holds } from './neighbour.ts'
import { meant, whom } from './whom.ts'

const animal = (taxon: string) => {
  const found = grazer(taxon)
  if (!found) throw new Error(taxon)
  return found
}
const hunter = (name: string) => {
  const [found] = neighboursNamed(name).flatMap((one) => hunting(one) ?? [])
  if (!found) throw new Error(name)
  return found
}

describe('who lives beside the crew', () => {
  test('a species goes by its own row where there is one, else by that of its genus', () => {
    expect(neighboursNamed('Bodianus bimaculatus').map(({ key }) => key)).toEqual(['dwarf_hogfishes'])
    expect(neighboursNamed('Bodianus rufus').map(({ key }) => key)).toEqual(['large_hogfishes'])
    expect(neighboursNamed('Flame Hawkfish').map(({ key }) => key)).toEqual(['small_hawkfishes'])
  })

  test('one animal may go by two rows, as hunter and as bully', () => {
    expect(neighboursNamed('Rhinecanthus aculeatus').map(({ key }) => key)).toEqual([
      'crushing_triggerfishes',
      'triggerfishes_of_temper',
    ])
  })

  test('a fish that troubles nobody has no row', () => {
    expect(neighboursNamed('Nemateleotris magnifica')).toEqual([])
  })

  test('everyone who is threatened is an animal of the catalogue', () => {
    const nobody = neighbours().flatMap(({ key, threats }) =>
      threats.flatMap((threat) =>
        threat.whom.filter((text) => !grazersOf(text)).map((text) => `${key}: ${text}`),
      ),
    )
    expect(nobody).toEqual([])
  })
})

const grazersOf = (text: string): boolean =>
  grazers().some((one) => meant({ ...whom(text), below_cm: 1e9 }, one) > 0)

describe('whom they threaten', () => {
  test('a coris wrasse takes snails of any size, and urchins under 7 cm', () => {
    const coris = hunter('Coris gaimard')
    expect(exposed(coris, animal('Turbo fluctuosa'))).toBe(1)
    expect(exposed(coris, animal('Tripneustes gratilla'), 12)).toBe(0)
    expect(exposed(coris, animal('Tripneustes gratilla'), 3)).toBe(1)
  })

  test('a limit of size has a soft edge: half of the snails just at it are safe', () => {
    const moon = hunter('Thalassoma lunare')
    expect(exposed(moon, animal('Trochus histrio'), 3.5)).toBeCloseTo(0.5, 12)
    expect(exposed(moon, animal('Trochus histrio'), 2.4)).toBe(1)
    expect(exposed(moon, animal('Trochus histrio'), 4.6)).toBe(0)
  })

  test('a leopard wrasse leaves grown snails and urchins alone', () => {
    const leopard = hunter('Macropharyngodon meleagris')
    expect(exposed(leopard, animal('Trochus histrio'))).toBe(0)
    expect(exposed(leopard, animal('Stomatella spp.'))).toBe(1)
    expect(exposed(leopard, animal('Tripneustes gratilla'))).toBe(0)
  })

  test('a young coris wrasse does not hunt yet, a mandarin not in a large tank', () => {
    expect(holds(hunter('coris wrasse'), { size_cm: 8 })).toBe(false)
    expect(holds(hunter('coris wrasse'), { size_cm: 20 })).toBe(true)
    expect(holds(hunter('coris wrasse'), {})).toBe(true)
    expect(holds(hunter('mandarin'), { volume_L: 400 })).toBe(false)
  })
})

test('a chance within a year is a rate: 0.9 in a year is 2.3 a year, and certain is 4.6', () => {
  expect(1 - Math.exp(-365 * fact(predationId('coris_wrasses')).typical)).toBeCloseTo(0.9, 6)
  expect(fact(predationId('octopuses')).typical * 365).toBeCloseTo(4.6, 6)
})
