import { pH } from '@holdfast/seawater'
import { describe, expect, test } from 'vitest'
import type { System } from '../system.ts'
import { run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'
import { unIonisedAmmonia_mg_N_L } from './ammonia.ts'
import { dissolvedOrganicCarbon_mg_L } from './organic-carbon.ts'
import {
  type At,
  chanceOfLowOxygen,
  darkRespiration,
  hoursWithoutPumps,
  oxygenAtDawn_mg_L,
  oxygenSaturation_mg_L,
  oxygenWarning,
} from './oxygen.ts'

const stocked = (g_per_day: number, temperature_C = 25, more: Partial<System> = {}): At => {
  const { model, end, parameters } = run({
    system: {
      ...box,
      vessels: [{ id: 'display', kind: 'display', volume_L: 300 }],
      temperature_C,
      animals: [{ kind: 'mixed reef fish', count: 6, mass_g: 10, role: 'fish' }],
      feeds: [{ kind: 'dry pellet', g_per_day, N_mass_fraction: 0.07, P_mass_fraction: 0.012 }],
      ...more,
    },
    days: 60,
  })
  return { model, states: end, parameters, settings: model.settings.values }
}

describe('oxygen in the dark', () => {
  // Garcia & Gordon 1992: 6.77 mg/L at 25 °C and S 35.
  test('is near saturation in water where nothing lives', () => {
    const empty = stocked(0)
    expect(oxygenSaturation_mg_L(empty.model)).toBeCloseTo(6.77, 2)
    expect(oxygenAtDawn_mg_L(empty)).toBeCloseTo(6.77, 2)
    expect(hoursWithoutPumps(empty)).toBe(Number.POSITIVE_INFINITY)
  })

  test('is less the more is fed and the warmer it is', () => {
    const dawn = [3, 12].map((grams) => oxygenAtDawn_mg_L(stocked(grams)))
    expect(dawn[1]).toBeLessThan(dawn[0])
    expect(oxygenAtDawn_mg_L(stocked(3, 29))).toBeLessThan(dawn[0])
  })

  // 3 g of pellets a day hold 1.38 g C (0.46 g/g, from memory); most is burnt by fish, then by what rots.
  test('is used by no more than the carbon of the feed and the nitrogen nitrified ask for', () => {
    const most = (3 * 0.46 * 1e6) / 12.011
    const used = darkRespiration(stocked(3))
    expect(used).toBeGreaterThan(0.5 * most)
    expect(used).toBeLessThan(1.4 * most)
  })

  test('falls within hours when pumps stop, sooner with more life in it', () => {
    const [light, heavy] = [3, 9].map((grams) => hoursWithoutPumps(stocked(grams)))
    expect(heavy).toBeGreaterThan(0)
    expect(heavy).toBeLessThan(24)
    expect(light).toBeGreaterThan(heavy)
  })

  test('is low with a chance counted by the weights of the members', () => {
    const members = [stocked(3), stocked(200)]
    expect(chanceOfLowOxygen(members, [3, 1])).toBeCloseTo(0.25, 9)
    expect(oxygenWarning(members[0].model, 0.25, 6)).toBe('warn')
    expect(oxygenWarning(members[0].model, 0.01, 6)).toBe('none')
    expect(oxygenWarning(members[0].model, 0.6, 3.5)).toBe('urgent')
  })
})

// Clegg & Whitfield 1995, as in the check values of sea water: 5.37 % at S 35, 25 °C, pH 8 on the total scale.
test('of 1 mg/L of ammonia nitrogen 0.0537 mg/L is un-ionised at pH 8 and 25 °C', () => {
  const { model, samples } = run({
    system: box,
    days: 1,
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0, ammonia_mg_N_L: 1 },
  })
  expect(unIonisedAmmonia_mg_N_L(model, samples[0], pH('total', 8))).toBeCloseTo(0.0537, 4)
})

test('with foam and carbon for ever the background of sea water stays: 0.48 to 0.84 mg C/L', () => {
  const { model, end } = run({
    system: { ...box, equipment: [{ kind: 'skimmer' }, { kind: 'activated carbon', mass_g: 500 }] },
    days: 365,
    start: { 'water.resistant/C': 3000, 'water.skimmable/C': 1000 },
  })
  const carbon = dissolvedOrganicCarbon_mg_L(model, end)
  expect(carbon).toBeGreaterThan(0.48)
  expect(carbon).toBeLessThan(0.84)
})
