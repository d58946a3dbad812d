import { catalogueAlone, fact, predationId } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import type { Event } from '../log.ts'
import type { Animals, System } from '../system.ts'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'
import { huntedOf } from './predation.ts'

const snail = 'Trochus histrio'
const urchin = 'Tripneustes gratilla'
const crew = (taxon: string, count = 20): Animals => ({ kind: taxon, taxon, count, role: 'grazer' })
const fish = (kind: string, more: Partial<Animals> = {}): Animals => ({
  kind,
  count: 1,
  role: 'fish',
  ...more,
})
const tank = (...animals: readonly Animals[]): System => ({
  ...box,
  vessels: [{ id: 'display', kind: 'display', volume_L: 5000 }],
  surfaces: [{ ...plate, area_m2: 10 }],
  algae: [{ kind: 'film_green', surface: 'plate', cover: 0.5 }],
  animals,
})
/** They neither starve nor age: who is gone was eaten. */
const immortal = {
  ...nothingUnexplained,
  'crew.starvation': 0,
  'grazer.trochus_histrio.mortality': 0,
  'grazer.tripneustes_gratilla.mortality': 0,
}
const runFor = (system: System, days: number, events: readonly Event[] = []) =>
  run({ system, days, facts: immortal, events, samples: [0, days] })
const left = (system: System, taxon: string, days = 365, events: readonly Event[] = []): number => {
  const [before, after] = runFor(system, days, events).course(`living.${taxon}`)
  return after / before
}

// The severity of the table (common practice): nine in ten within the year.
describe('with a grown coris wrasse', () => {
  test('nine snails in ten are gone within a year', () => {
    expect(left(tank(crew(snail), fish('coris wrasse', { adult_size_cm: 25 })), snail)).toBeCloseTo(0.1, 3)
  })

  test('two take no more than one: the table tells the chance, not how it goes with their number', () => {
    const two = tank(crew(snail), fish('coris wrasse', { count: 2 }))
    expect(left(two, snail)).toBeCloseTo(0.1, 3)
  })

  test('a large urchin is safe, a small one is not', () => {
    const urchins = (size_cm: number): Animals => ({ ...crew(urchin, 2), adult_size_cm: size_cm })
    expect(left(tank(urchins(12), fish('Coris gaimard')), urchin)).toBe(1)
    expect(left(tank(urchins(4), fish('Coris gaimard')), urchin)).toBeLessThan(0.2)
  })
})

test.each(['yellow wrasse', 'fairy wrasse', 'six-line wrasse', 'mandarin', 'clownfish', 'royal gramma'])(
  'a %s eats no grown snail',
  (kind) => {
    expect(huntedOf(tank(crew(snail), fish(kind)), catalogueAlone)).toEqual([])
  },
)

test.each(['clown triggerfish', 'puffer', 'Bodianus rufus', 'octopus', 'smashing mantis shrimp'])(
  'a %s eats most snails within a year',
  (kind) => {
    expect(left(tank(crew(snail), fish(kind)), snail)).toBeLessThan(0.25)
  },
)

test('of dwarf tank mates a young coris wrasse hunts nothing yet', () => {
  expect(huntedOf(tank(crew(snail), fish('coris wrasse', { adult_size_cm: 8 })), catalogueAlone)).toEqual([])
})

describe('what a hunter eats', () => {
  const { ledger, course } = runFor(tank(crew(snail, 100), fish('puffer', { mass_g: 80 })), 90)
  const eaten = (atom: string, to?: string): number =>
    moved(ledger, { process: 'predation', atom, from: `animals.${snail}`, ...(to ? { to } : {}) })

  test('leaves the bodies of the crew, atom by atom', () => {
    for (const atom of ['N', 'P', 'C']) {
      const [before, after] = course(`animals.${snail}/${atom}`)
      const grown = moved(ledger, { atom, to: `animals.${snail}` })
      expect(before + grown - after).toBeCloseTo(eaten(atom), 3)
    }
  })

  // Of what fish eat most N comes back dissolved and adults keep next to nothing: the split of feeding.
  test('is mostly excreted, partly voided or left to rot, and hardly kept', () => {
    const nitrogen = eaten('N')
    expect(eaten('N', 'animals.fish') / nitrogen).toBeLessThan(0.02)
    expect(eaten('N', 'water.ammonia') / nitrogen).toBeGreaterThan(0.4)
    expect(eaten('N', 'bed.fast') / nitrogen).toBeCloseTo(1 - fact('crew.swallowed').typical, 6)
  })
})

describe('a hunter that the log tells of', () => {
  // None of it on the first day, as the outlook puts those that are still to come.
  const system = tank(crew(snail), fish('Thalassoma lunare', { taxon: 'Thalassoma lunare', count: 0 }))
  const comes: Event = { day: 100, kind: 'animals added', taxon: 'Thalassoma lunare', count: 1 }
  const goes: Event = { day: 130, kind: 'animals lost', taxon: 'Thalassoma lunare', count: 1 }

  test('hunts from the day it comes to the day it goes', () => {
    expect(left(system, snail, 100)).toBe(1)
    const rate = fact(predationId('moon_wrasses')).typical
    // A snail of 3 cm against a limit of 3.5 cm: nearly three in four are within it.
    const share = 0.5 + (1 - 3 / 3.5) / 0.6
    expect(left(system, snail, 200, [comes, goes])).toBeCloseTo(Math.exp(-rate * share * 30), 3)
  })
})

test('a fish that dies leaves its body to the water, one taken out does not', () => {
  const system = tank(crew(snail), fish('dwarf angel', { mass_g: 30, count: 2 }))
  const lost = (bodyTakenOut: boolean) =>
    runFor(system, 2, [{ day: 1, kind: 'animals lost', taxon: 'dwarf angel', count: 1, bodyTakenOut }])
  const rots = lost(false)
  const [before, after] = rots.course('animals.fish/N')
  expect(after / before).toBeCloseTo(0.5, 6)
  expect(moved(rots.ledger, { process: 'animals lost', atom: 'N', to: 'bed.fast' })).toBeCloseTo(
    before / 2,
    3,
  )
  expect(moved(lost(true).ledger, { process: 'animals lost', atom: 'N', to: 'bed.fast' })).toBe(0)
})
