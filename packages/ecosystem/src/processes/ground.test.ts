import { algaeKinds } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import type { Stand } from '../accounts/index.ts'
import type { System } from '../system.ts'
import { mostGround } from '../testing/ground.ts'
import { nothingUnexplained, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'
import { overgrows, shades } from './overgrowth.ts'
import { growthForm } from './stands.ts'

const opening = { nitrate_mg_L: 5, phosphate_mg_L: 0.08 }
const wide: System = { ...box, vessels: [{ id: 'display', kind: 'display', volume_L: 50_000 }] }
const grown = (kinds: readonly string[], cover: number, days: number, more: Partial<System> = {}) =>
  run({
    system: {
      ...wide,
      surfaces: [plate],
      algae: kinds.map((kind) => ({ kind, surface: 'plate', cover })),
      ...more,
    },
    days,
    opening,
    facts: nothingUnexplained,
    samples: Array.from({ length: days / 10 + 1 }, (_, n) => n * 10),
  })
/** Nothing gives silicate to the water but what is in it. */
const noSilicateSource = {
  'si.release.sand': 0,
  'si.release.rock': 0,
  'si.release.glass': 0,
  'si.k.opal': 0,
} as const
const open = (kind: string): Stand => ({ surface: 'plate', kind, patch: 'open' })

// Cover, crust and bare ground are one surface: uprights stand on crust or beside it, crusts and what is bare
// between them are the ground. Rich water, light and no mouth for a long year.
describe('without grazers', () => {
  const kinds = algaeKinds().map(({ key }) => key)
  const tufted = kinds.filter((kind) => growthForm(kind) === 'tufted')

  const held = (algae: System['algae']): void => {
    const grown = run({
      system: { ...wide, surfaces: [plate], algae },
      days: 400,
      opening: { nitrate_mg_L: 50, phosphate_mg_L: 1 },
      facts: nothingUnexplained,
    })
    expect(mostGround(grown)).toBeLessThanOrEqual(1 + 1e-4)
  }

  test.each(kinds)('%s never covers more than the ground there is', (kind) => {
    held([{ kind, surface: 'plate', cover: 0.1 }])
  })

  test.each(tufted)('%s takes no ground twice, on crust and over film', (kind) => {
    held([kind, 'film_green', 'coralline'].map((one) => ({ kind: one, surface: 'plate', cover: 0.3 })))
  })

  test('all kinds together never take more than the ground there is', () => {
    held(kinds.map((kind) => ({ kind, surface: 'plate', cover: 0.03 })))
  })

  test('ground told to be taken more than once is shared', () => {
    held(kinds.map((kind) => ({ kind, surface: 'plate', cover: 0.4 })))
  })
}, 30_000)

test('a film covers what its mass says, a quarter of the mass that hides the ground some half of it', () => {
  const { samples, model, course, cover } = grown(['film_green'], 0.05, 60)
  const full = 8 * 0.65
  const carbon = course('surface.plate.film_green.open/C')
  const of = model.parameters.find(({ fact }) => fact === 'algae.film_green.tissue_C')
  expect(samples.length).toBe(7)
  for (const [n, covered] of cover(open('film_green')).entries()) {
    const mass = carbon[n] / (of?.band.typical ?? Number.NaN)
    expect(Math.abs(covered - (1 - Math.exp((-3 * mass) / full)))).toBeLessThan(1e-9)
  }
})

describe('new rock', () => {
  const bare = { surfaces: [{ ...plate, age_days: 0 }], rock: [] }
  const { cover } = grown(['coralline', 'film_green'], 0, 360, bare)

  // Succession in new systems, common practice: first spots of coralline in weeks 6 to 16, 20 to 60 % of lit
  // rock in half a year to a year.
  test('is bare, and shows crust only after months', () => {
    const crust = cover(open('coralline'))
    expect(crust[0]).toBeLessThan(0.001)
    expect(crust[4]).toBeLessThan(0.01)
    expect(crust[12]).toBeLessThan(0.15)
    expect(crust[36]).toBeGreaterThan(0.1)
    expect(crust[36]).toBeLessThan(0.6)
  })

  test('has a film of green within weeks where some drifts by', () => {
    expect(cover(open('film_green'))[6]).toBeGreaterThan(0.05)
  })
})

// Larger forms win ground of lower ones (tables of kinds, memory of the papers named there).
test('ungrazed hair algae take over turf, and turf does not take over hair algae', () => {
  expect(overgrows('hair_green', 'turf')).toBe(true)
  expect(overgrows('turf', 'hair_green')).toBe(false)
  const { cover } = grown(['hair_green', 'turf'], 0.3, 360)
  expect(cover(open('turf'))[36]).toBeLessThan(0.7 * cover(open('turf'))[0])
  expect(cover(open('hair_green'))[36]).toBeGreaterThan(0.5)
})

test('only kinds that are taller by half or more take the light of others', () => {
  expect(shades('macro', 'turf')).toBe(true)
  expect(shades('hair_green', 'red_cotton')).toBe(false)
  const alone = grown(['coralline'], 0.2, 120).cover(open('coralline'))[12]
  const under = grown(['coralline', 'bryopsis'], 0.2, 120).cover(open('coralline'))[12]
  expect(under).toBeLessThan(alone)
})

test('every kind has one of three ways to cover ground', () => {
  const forms = Object.fromEntries(algaeKinds().map(({ key }) => [key, growthForm(key)]))
  expect(forms).toMatchObject({
    film_diatom: 'film',
    cyano: 'film',
    hair_green: 'tufted',
    coralline: 'crust',
  })
})

// Diatoms of new tanks fade after weeks (common practice): their silicate is used up.
test('diatoms bloom on silicate and fade when it is gone', () => {
  const { cover: of, concentrations } = run({
    system: {
      ...box,
      surfaces: [{ ...plate, area_m2: 2 }],
      algae: [{ kind: 'film_diatom', surface: 'plate', cover: 0.01 }],
    },
    days: 120,
    opening: { nitrate_mg_L: 20, phosphate_mg_L: 0.5 },
    facts: { ...nothingUnexplained, ...noSilicateSource },
    start: { 'water.silicate/Si': 50 * 400 },
  })
  const cover = of(open('film_diatom'))
  const most = Math.max(...cover)
  expect(most).toBeGreaterThan(0.2)
  expect(cover[120]).toBeLessThan(most / 3)
  expect(concentrations('water.silicate/Si')[120]).toBeLessThan(5)
})
