import { presentOf } from '@holdfast/crew-plan/testing/present-of'
import type { Surface, System } from '@holdfast/ecosystem'
import { ordinaryReef } from '@holdfast/ecosystem/testing/ordinary-reef'
import { describe, expect, test } from 'vitest'
import { reachOf } from './index.ts'

const reef = ordinaryReef(3)
const snails = [{ kind: 'banded trochus snail', taxon: 'Trochus histrio', count: 6, role: 'grazer' as const }]
/** Half of every surface under hair algae. */
const overgrown = (system: System): System => ({
  ...system,
  algae: system.surfaces.map(({ id }) => ({ kind: 'hair_green', surface: id, cover: 0.5 })),
})
const grazed: System = { ...reef, animals: [...reef.animals, ...snails] }
const overflow: Surface = {
  id: 'overflow',
  vessel: reef.vessels[0].id,
  kind: 'plumbing_overflow',
  area_m2: 0.1,
  light_umol_m2_s: 90,
  light_h_per_day: 9,
  age_days: 400,
  enclosed: true,
  opening_mm: 5,
}
const total = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0)

describe('the week of every place', () => {
  const answer = reachOf(presentOf(grazed))

  test('what is left and what is eaten together are what grows, where no stand is eaten down', () => {
    for (const { growth_g_week, left_g_week, eaten, kind, surface } of answer.places) {
      const eatenThere = total(eaten.map(({ g_week }) => g_week))
      const balance = Math.max(0, growth_g_week.value - eatenThere)
      expect(left_g_week.value, `${kind} on ${surface}`).toBeCloseTo(balance, 9)
    }
  })

  test('the parts of a surface together have the cover that it was described with', () => {
    const { covered } = reachOf(presentOf(overgrown(reef)))
    expect(covered.map(({ surface }) => surface)).toEqual(reef.surfaces.map(({ id }) => id))
    for (const { surface, kind, cover } of covered)
      expect(cover.value, `${kind} on ${surface}`).toBeCloseTo(0.5, 1)
  })

  test('the snails use no more than their appetite, and some of it', () => {
    const [used] = answer.grazers.map((one) => one.used.value)
    expect(used).toBeGreaterThan(0)
    expect(used).toBeLessThanOrEqual(1)
  })

  test('the most exposed place comes first, and is none where a keeper likes what grows', () => {
    const [first] = answer.exposed
    const density = answer.places.map(({ left_g_week, area_m2 }) => left_g_week.value / area_m2)
    expect(density).toEqual(density.toSorted((a, b) => b - a))
    expect(first?.deeds.length).toBeGreaterThan(0)
    expect(answer.exposed.length).toBeLessThanOrEqual(3)
  })

  test('snails get to the open glass and eat of its film, and eat nowhere that they do not get to', () => {
    const [snail] = answer.grazers
    expect(snail?.gets).toContain('glass open')
    const film = answer.places.find(
      ({ surface, patch, kind }) => surface === 'glass' && patch === 'open' && kind === 'film_green',
    )
    expect(film?.eaten.map(({ taxon }) => taxon)).toEqual([snail?.taxon])
    for (const { surface, patch, eaten } of answer.places)
      if (eaten.length > 0) expect(snail?.gets).toContain(`${surface} ${patch}`)
  })

  test('in a box behind a comb too fine for them all that grows is left', () => {
    const boxed = reachOf(presentOf({ ...grazed, surfaces: [...grazed.surfaces, overflow] })).places.filter(
      ({ surface }) => surface === 'overflow',
    )
    expect(boxed.length).toBeGreaterThan(0)
    for (const { met, eaten, growth_g_week, left_g_week } of boxed) {
      expect(met).toBe('not reached')
      expect(eaten).toEqual([])
      expect(left_g_week.value).toBeCloseTo(growth_g_week.value, 9)
    }
  })

  test('without grazers nobody is told to eat, and it is said so', () => {
    const alone = reachOf(presentOf(reef))
    expect(alone.grazers).toEqual([])
    for (const { why } of alone.exposed) expect(why).toBe('No grazer lives in this system.')
  })
})

describe('what to do about a place', () => {
  test('a lit box behind a comb gets a blind against light, with its cautions, and no snail that does not pass', () => {
    const system = overgrown({ ...grazed, surfaces: [overflow] })
    const [box] = reachOf(presentOf(system)).exposed
    const shade = box?.deeds.find(({ measure }) => measure === 'shade_surface')
    expect(box?.why).toBe('None of your animals gets there.')
    expect(shade?.cautions.map(({ key }) => key)).toContain('mains_near_water')
    expect(JSON.stringify(box?.deeds)).not.toContain('Of those you have')
  })

  test('where little grows for want of light the keeper is told to wait and look', () => {
    const dim = grazed.surfaces.map((surface) => ({ ...surface, light_umol_m2_s: 1 }))
    const { exposed } = reachOf(presentOf({ ...grazed, surfaces: dim }))
    for (const { deeds } of exposed) expect(deeds.map(({ measure }) => measure)).toEqual(['wait'])
  })

  test('a pane that is wiped every day is nobody’s exposed place', () => {
    const wiped = grazed.surfaces.map((surface) =>
      surface.kind === 'glass' ? { ...surface, hand_cleaned_every_days: 1 } : surface,
    )
    const { exposed } = reachOf(presentOf({ ...grazed, surfaces: wiped }))
    const glass = grazed.surfaces.filter(({ kind }) => kind === 'glass').map(({ id }) => id)
    for (const { surface, patch } of exposed) expect(patch === 'open' && glass.includes(surface)).toBe(false)
  })

  test('the hand comes last, and nothing is done without the cautions before it', () => {
    const { exposed } = reachOf(presentOf(overgrown(grazed)))
    expect(exposed.length).toBe(3)
    for (const { deeds } of exposed) {
      const last = deeds[deeds.length - 1]
      expect(last?.says).toMatch(/hand/i)
      expect(last?.cautions.length).toBeGreaterThan(0)
    }
  })
})
