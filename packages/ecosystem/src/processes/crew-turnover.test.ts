import { describe, expect, test } from 'vitest'
import type { System } from '../system.ts'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'

const snail = 'Trochus histrio'
const withSnails = (count: number, mass_g?: number): System => ({
  ...box,
  vessels: [{ id: 'display', kind: 'display', volume_L: 5000 }],
  surfaces: [{ ...plate, area_m2: 1 }],
  algae: [{ kind: 'hair_green', surface: 'plate', cover: 0.3 }],
  animals: [
    {
      kind: 'trochus snail',
      taxon: snail,
      count,
      role: 'grazer',
      ...(mass_g === undefined ? {} : { mass_g }),
    },
  ],
})
const asked = { opening: { nitrate_mg_L: 10, phosphate_mg_L: 0.2 }, facts: nothingUnexplained }

// Pitfall of builders: grazers as a number per litre that is always fed.
describe('with food for ten, a crew of a hundred', () => {
  const many = run({ system: withSnails(100), days: 180, ...asked })
  const few = run({ system: withSnails(6), days: 180, ...asked })

  test('goes hungry and dies off, where six live on', () => {
    expect(Math.max(...many.course(`hunger.${snail}`))).toBeGreaterThan(0.5)
    expect(many.course(`living.${snail}`)[180]).toBeLessThan(60)
    expect(Math.max(...few.course(`hunger.${snail}`))).toBeLessThan(0.3)
    expect(few.course(`living.${snail}`)[180]).toBeGreaterThan(4.5)
  })

  test('gives the atoms of its dead to the waste', () => {
    const held = many.course(`animals.${snail}/N`)
    expect(held[0] - held[180]).toBeCloseTo(
      moved(many.ledger, { process: 'crew-turnover', atom: 'N', to: 'bed.fast' }) -
        moved(many.ledger, { process: 'grazing', atom: 'N', to: `animals.${snail}` }),
      4,
    )
  })
})

test('over a year the nitrogen in a grown crew is level within a tenth, but for those that die', () => {
  const { course } = run({
    system: withSnails(6),
    days: 365,
    opening: asked.opening,
    facts: { ...nothingUnexplained, 'grazer.trochus_histrio.mortality': 0 },
  })
  const held = course(`animals.${snail}/N`)
  expect(Math.abs(held[365] / held[0] - 1)).toBeLessThan(0.1)
})

test('young animals grow towards adult size and then keep nothing more', () => {
  const { course, ledger } = run({
    system: withSnails(4, 3),
    days: 730,
    opening: asked.opening,
    facts: { ...nothingUnexplained, 'grazer.trochus_histrio.mortality': 0 },
    marks: [700, 730],
  })
  const held = course(`animals.${snail}/N`)
  // Adults of the table weigh 9 g, three times what these do.
  expect(held[730] / held[0]).toBeGreaterThan(1.5)
  expect(held[730] / held[0]).toBeLessThan(3.01)
  const eaten = moved(ledger, { process: 'grazing', atom: 'N' })
  expect(moved(ledger, { process: 'grazing', atom: 'N', to: `animals.${snail}` })).toBeLessThan(0.25 * eaten)
})

describe('a tang on a lawn of its own', () => {
  const tang = 'Zebrasoma flavescens'
  const held = (mass_g?: number) =>
    run({
      system: {
        ...withSnails(1),
        surfaces: [{ ...plate, area_m2: 6 }],
        feeds: [{ kind: 'pellet', g_per_day: 1, N_mass_fraction: 0.07, P_mass_fraction: 0.01 }],
        animals: [
          { kind: tang, taxon: tang, count: 1, role: 'fish', ...(mass_g === undefined ? {} : { mass_g }) },
        ],
      },
      days: 365,
      opening: asked.opening,
      facts: { ...nothingUnexplained, 'grazer.zebrasoma_flavescens.mortality': 0 },
      samples: [0, 365],
    }).course(`animals.${tang}/N`)

  test('holds the same nitrogen after a year within a tenth when it is grown', () => {
    const [before, after] = held()
    expect(Math.abs(after / before - 1)).toBeLessThan(0.1)
  })

  test('grows when it is young, and not beyond its adult size', () => {
    const [adult] = held()
    const [before, after] = held(20)
    expect(after / before).toBeGreaterThan(1.3)
    expect(after).toBeLessThan(1.001 * adult)
  })
})

// Keepers' practice: a share of bought animals is lost in the first month; 0.12 typical (crew.first_month_loss).
test('of a hundred newcomers about a tenth more than of old hands is lost in the first weeks', () => {
  const lost = (events: NonNullable<Parameters<typeof run>[0]['events']>, count: number): number => {
    const living = run({
      system: withSnails(count),
      days: 120,
      ...asked,
      facts: { ...asked.facts, 'crew.starvation': 0 },
      events,
    }).course(`living.${snail}`)
    return 1 - living[120] / 100
  }
  const bought = lost([{ day: 0.5, kind: 'animals added', taxon: snail, count: 99 }], 1)
  expect(bought - lost([], 100)).toBeGreaterThan(0.05)
  expect(bought - lost([], 100)).toBeLessThan(0.2)
})

describe('animals that the keeper counts as lost', () => {
  const lose = (bodyTakenOut: boolean) =>
    run({
      system: withSnails(20),
      days: 2,
      ...asked,
      events: [{ day: 1, kind: 'animals lost', taxon: snail, count: 5, bodyTakenOut }],
    })

  test('rot in the system where nobody took them out', () => {
    const { ledger } = lose(false)
    expect(moved(ledger, { process: 'crew leaves', atom: 'N', to: 'bed.fast' })).toBeGreaterThan(0)
    expect(moved(ledger, { process: 'crew leaves', atom: 'N', to: 'outside.animals' })).toBe(0)
  })

  test('leave it with their atoms where somebody did', () => {
    const { ledger, course } = lose(true)
    expect(moved(ledger, { process: 'crew leaves', atom: 'N', to: 'outside.animals' })).toBeGreaterThan(0)
    expect(course(`living.${snail}`)[2]).toBeLessThan(15.01)
  })
})

test('animals moved to another vessel stay, moved elsewhere they are gone', () => {
  const living = (to: string): number =>
    run({
      system: withSnails(20),
      days: 2,
      ...asked,
      events: [{ day: 1, kind: 'animals moved', taxon: snail, count: 5, to }],
    }).course(`living.${snail}`)[2]
  expect(living('display')).toBeGreaterThan(19.5)
  expect(living('a friend')).toBeLessThan(15.01)
})
