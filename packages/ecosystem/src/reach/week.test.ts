import { catalogueAlone } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { assemble } from '../assemble/assemble.ts'
import { settingsOn } from '../simulate/index.ts'
import { timeline } from '../simulate/timeline.ts'
import { startOf } from '../start/start.ts'
import type { Surface, System } from '../system.ts'
import { fittingCrew } from '../testing/fitting-crew.ts'
import { ordinaryReef } from '../testing/ordinary-reef.ts'
import { intakes, type PlaceWeek, tasteAtHeight, type World, weekOf } from './index.ts'

function week(system: System): {
  readonly places: readonly PlaceWeek[]
  readonly model: ReturnType<typeof assemble>
  readonly world: World
} {
  const model = assemble(system)
  const moments = timeline({ system, facts: model.facts, events: [], from: 0, to: 7, asOf: 0 })
  const parameters = Float64Array.from(model.parameters, ({ band }) => band.typical)
  const states = startOf(model, parameters, { nitrate_mg_L: 8, phosphate_mg_L: 0.06 }, 0)
  const world = { parameters, states, settings: settingsOn(model, moments, 0) }
  return { places: weekOf({ model, world, from: 0, to: 7, moments }), model, world }
}

const reef = ordinaryReef(3)
const snails = [{ kind: 'banded trochus snail', taxon: 'Trochus histrio', count: 6, role: 'grazer' as const }]
const on = (places: readonly PlaceWeek[], surface: string): readonly PlaceWeek[] =>
  places.filter((place) => place.surface === surface)
const grazed = (places: readonly PlaceWeek[]): number =>
  places.reduce((sum, { grazed_g_d }) => sum + [...grazed_g_d.values()].reduce((all, one) => all + one, 0), 0)
const grown = (places: readonly PlaceWeek[]): number =>
  places.reduce((sum, { growth_g_d }) => sum + growth_g_d, 0)

describe('the week of every surface', () => {
  test('twice the light on the glass makes more grow there', () => {
    const brighter = reef.surfaces.map(
      (surface): Surface =>
        surface.id === 'glass' ? { ...surface, light_umol_m2_s: 2 * surface.light_umol_m2_s } : surface,
    )
    const before = grown(on(week(reef).places, 'glass'))
    expect(grown(on(week({ ...reef, surfaces: brighter }).places, 'glass'))).toBeGreaterThan(1.05 * before)
  })

  test('without its snails nothing of it is eaten', () => {
    expect(grazed(week({ ...reef, animals: [...reef.animals, ...snails] }).places)).toBeGreaterThan(0)
    expect(grazed(week(reef).places)).toBe(0)
  })

  test('snails of the sump eat there and not in the display, and those of no vessel in both', () => {
    const shelf: Surface = { ...reef.surfaces[0], id: 'shelf', vessel: 'sump', area_m2: 0.1 }
    const grazedIn = (vessel?: string) => {
      const homed = snails.map((one) => ({ ...one, ...(vessel === undefined ? {} : { vessel }) }))
      const { places } = week({
        ...reef,
        vessels: [...reef.vessels, { id: 'sump', kind: 'sump', volume_L: 30 }],
        surfaces: [...reef.surfaces, shelf],
        animals: [...reef.animals, ...homed],
      })
      const inSump = grazed(on(places, 'shelf'))
      return { inSump, inDisplay: grazed(places) - inSump }
    }
    expect(grazedIn('sump').inDisplay).toBe(0)
    expect(grazedIn('sump').inSump).toBeGreaterThan(0)
    expect(grazedIn(reef.vessels[0].id).inSump).toBe(0)
    expect(grazedIn(reef.vessels[0].id).inDisplay).toBeGreaterThan(0)
    expect(Math.min(...Object.values(grazedIn()))).toBeGreaterThan(0)
  })

  test('a surface behind a comb of 5 mm gets no grazing from a snail of 3 cm', () => {
    const overflow: Surface = {
      id: 'overflow',
      vessel: reef.vessels[0].id,
      kind: 'plumbing_overflow',
      area_m2: 0.1,
      light_umol_m2_s: 90,
      light_h_per_day: 9,
      age_days: 400,
    }
    const system = { ...reef, animals: [...reef.animals, ...snails] }
    const open = week({ ...system, surfaces: [...reef.surfaces, overflow] })
    const combed = { ...overflow, enclosed: true, opening_mm: 5 }
    const closed = week({ ...system, surfaces: [...reef.surfaces, combed] })
    expect(grazed(on(open.places, 'overflow'))).toBeGreaterThan(0)
    expect(grazed(on(closed.places, 'overflow'))).toBe(0)
    expect(grown(on(closed.places, 'overflow'))).toBeGreaterThan(0)
  })
})

test('what one animal is reckoned to eat today is what the simulation has each of them eat', () => {
  const animals = fittingCrew(reef, 'hair_green', 3)
  const { model, world, places } = week({ ...reef, animals: [...reef.animals, ...animals] })
  const taxa = animals.flatMap(({ taxon }) => taxon ?? [])
  const moments = timeline({ system: model.system, facts: model.facts, events: [], from: 0, to: 1, asOf: 0 })
  const soon = weekOf({ model, world, from: 0, to: 0.01, moments })
  for (const { taxon, algae_g_d, appetite_g_d } of intakes(model, world, taxa, places)) {
    const count = animals.find((one) => one.taxon === taxon)?.count ?? 0
    const eaten = soon.reduce((sum, place) => sum + (place.grazed_g_d.get(taxon) ?? 0), 0)
    expect(algae_g_d, taxon).toBeGreaterThan(0)
    expect((count * algae_g_d) / eaten, taxon).toBeCloseTo(1, 1)
    expect(appetite_g_d, taxon).toBeGreaterThanOrEqual(algae_g_d)
  }
})

test('a bristletooth takes short hair algae a little and grown ones next to not at all', () => {
  const at = (height_mm: number): number =>
    tasteAtHeight('Ctenochaetus tominiensis', 'hair_green', height_mm, catalogueAlone)
  expect(at(2)).toBeGreaterThan(at(12))
  expect(at(12)).toBeLessThan(0.1)
  expect(tasteAtHeight('Amphiprion ocellaris', 'hair_green', 2, catalogueAlone)).toBe(0)
})
