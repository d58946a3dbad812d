import { expect, test } from 'vitest'
import type { Rock } from '../system.ts'
import { nothingUnexplained, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'

/** 200 L in the dark over rock, and sand where the rock is old; nothing lives or feeds here. */
const tank = (rock: Rock, sand_kg: number) => ({
  ...box,
  vessels: [{ id: 'display', kind: 'display' as const, volume_L: 200 }],
  rock: [rock],
  ...(sand_kg > 0 ? { sand: { mass_kg: sand_kg, depth_cm: 3 } } : {}),
  surfaces: [{ ...plate, light_umol_m2_s: 0, age_days: rock.age_days }],
})

/** Share of the drop of a change of half the water that comes back by a day after it. */
function comesBack(rock: Rock, sand_kg: number, after: number): number {
  const { concentrations } = run({
    system: tank(rock, sand_kg),
    days: 1 + after,
    opening: { nitrate_mg_L: 10, phosphate_mg_L: 0.1 },
    facts: nothingUnexplained,
    events: [{ day: 1, kind: 'water change', volume_L: 100 }],
    samples: [1, 1 + after],
  })
  const [before, later] = concentrations('water.phosphate/P')
  return (later - before / 2) / (before / 2)
}

const loaded: Rock = { kind: 'cured live', mass_kg: 40, age_days: 900 }
const clean: Rock = { kind: 'quarried dry', mass_kg: 40, age_days: 0 }

test('after a water change a third of the phosphate at least comes back from loaded rock within two weeks', () => {
  expect(comesBack(loaded, 0, 14)).toBeGreaterThan(1 / 3)
})

test('with an old sand bed more than half of it comes back', () => {
  expect(comesBack(loaded, 15, 14)).toBeGreaterThan(1 / 2)
})

test('from clean quarried rock none comes back: it goes on taking', () => {
  expect(comesBack(clean, 0, 14)).toBeLessThan(0)
})

// N11: soaked in purified water and put in sea water, rock lets a pulse go within hours (Flower et al.
// 2017, Estuaries Coasts 40:1301); powdered calcite gives back in under half an hour and takes up in 2
// to 3 h (Sø et al. 2011, Geochim Cosmochim Acta 75:2911). Abstracts read. The switch from fresh to sea
// water is no part of the model; the hours of the fast site and the weeks of the slow one are.
test('the fast part comes back within hours and the slow part takes weeks', () => {
  const [hours, days, weeks] = [0.25, 3, 28].map((after) => comesBack(loaded, 15, after))
  expect(hours).toBeGreaterThan(0.3 * weeks)
  expect(days).toBeGreaterThan(hours)
  expect(weeks).toBeGreaterThan(1.05 * days)
})
