import { fact } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import type { System } from '../system.ts'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

/** 1000 L over a square metre of sand or 40 kg of live rock, in the dark; waste enough lies in it. */
const tank: System = { ...box, vessels: [{ id: 'display', kind: 'display', volume_L: 1000 }] }
const overSand = (depth_cm: number): System => ({ ...tank, sand: { mass_kg: 14 * depth_cm, depth_cm } })
const overRock: System = { ...tank, rock: [{ kind: 'cured live', mass_kg: 40, age_days: 900 }] }
const waste = { 'bed.fast/C': 2e7, 'bed.fast/N': 0, 'bed.fast/P': 0 }

/** mmol of N that leaves as gas on a day of such water. */
function gasPerDay(
  system: System,
  nitrate_mg_L: number,
  { start = waste, facts = {} }: { start?: Record<string, number>; facts?: Record<string, number> } = {},
): number {
  const { ledger } = run({
    system,
    days: 2,
    opening: { nitrate_mg_L, phosphate_mg_L: 0.05 },
    facts: { ...nothingUnexplained, ...facts },
    start,
  })
  return moved(ledger, { process: 'denitrification', atom: 'N', to: 'outside.air' }) / 2000
}

describe('denitrification in sand', () => {
  // Reef sand 0.1 to 6 mmol N per m² and day in the field (Eyre et al. 2008; Capone et al. 1992; from memory).
  test('takes what reef sand takes, from a bed of 5 cm', () => {
    expect(gasPerDay(overSand(5), 10)).toBeGreaterThan(fact('den.reef_sand').low)
    expect(gasPerDay(overSand(5), 10)).toBeLessThan(fact('den.reef_sand').high)
  })

  // Toonen & Wee 2005 (from memory): beds of 25 and 90 mm made no clear difference.
  test('takes less than twice as much from 9 cm as from 2.5 cm, and nothing from half a centimetre', () => {
    const [thin, deep] = [gasPerDay(overSand(2.5), 10), gasPerDay(overSand(9), 10)]
    expect(deep).toBeGreaterThan(thin)
    expect(deep).toBeLessThan(2 * thin)
    expect(gasPerDay(overSand(0.5), 10)).toBe(0)
  })

  test('takes no more than organic carbon allows, 1.25 mol for each mol of nitrogen', () => {
    expect(gasPerDay(overSand(5), 10, { start: { 'bed.fast/C': 0, 'bed.slow/C': 0 } })).toBeLessThan(1e-6)
    const little = { 'bed.fast/C': 1e5, 'bed.slow/C': 0 }
    // 0.08 per day of it rots, 0.12 of that without oxygen (the typical facts).
    const most = (1e5 * 0.08 * 0.12) / 1.25 / 1000
    expect(gasPerDay(overSand(5), 10, { start: little })).toBeLessThan(most)
    expect(gasPerDay(overSand(5), 10, { start: little })).toBeGreaterThan(0.4 * most)
  })

  test('fed with dosed carbon takes the carbon it burns out of the water', () => {
    const { ledger } = run({
      system: overSand(5),
      days: 2,
      opening: { nitrate_mg_L: 20, phosphate_mg_L: 0 },
      facts: nothingUnexplained,
      start: { 'water.labile/C': 1e6, 'bed.fast/C': 0, 'bed.slow/C': 0 },
    })
    const gas = moved(ledger, { process: 'denitrification', atom: 'N' })
    // Flows out of two accounts keep their proportion as nearly as a step is true.
    expect(moved(ledger, { process: 'denitrification', atom: 'C' }) / gas).toBeCloseTo(1.25, 2)
  })
})

describe('denitrification in rock', () => {
  // Li et al. 2017, Acta Oceanol Sin 36(12):87 (abstract read): nitrate removal of live rock was not significant.
  test('may be nothing', () => {
    expect(gasPerDay(overRock, 10, { facts: { 'den.live_rock': 0 } })).toBe(0)
    expect(gasPerDay(overRock, 10)).toBeGreaterThan(0)
  })

  test('is nothing in dense new rock', () => {
    const dense: System = { ...tank, rock: [{ kind: 'quarried dry', mass_kg: 40, age_days: 900 }] }
    expect(gasPerDay(dense, 10)).toBe(0)
  })
})

test('gas out of rock comes from ammonia oxidised there, and the water shows no fall of nitrate for it', () => {
  const { ledger } = run({
    system: {
      ...overRock,
      feeds: [{ kind: 'dry pellet', g_per_day: 5, N_mass_fraction: 0.07, P_mass_fraction: 0.012 }],
    },
    days: 60,
    facts: { ...nothingUnexplained, 'den.live_rock': 0 },
  })
  const lost = moved(ledger, { process: 'rock-nitrogen-loss', atom: 'N', to: 'outside.air' })
  const oxidised = moved(ledger, { process: 'ammonia-oxidation', atom: 'N' })
  // Of all that goes into the rock.
  expect(lost / (lost + oxidised)).toBeCloseTo(fact('den.inside_rock_share').typical, 6)
  expect(moved(ledger, { atom: 'N', from: 'water.nitrate', to: 'outside.air' })).toBe(0)
})

test('a system without sand stands a rock that would turn all of its ammonia into gas', () => {
  const { ledger, end } = run({
    system: {
      ...overRock,
      feeds: [{ kind: 'dry pellet', g_per_day: 5, N_mass_fraction: 0.07, P_mass_fraction: 0.012 }],
    },
    days: 60,
    // Its prior is held at 1, where a few draws in a hundred lie.
    facts: { ...nothingUnexplained, 'den.inside_rock_share': 1 },
  })
  expect([...end].every(Number.isFinite)).toBe(true)
  const lost = moved(ledger, { process: 'rock-nitrogen-loss', atom: 'N', to: 'outside.air' })
  expect(lost / (lost + moved(ledger, { process: 'ammonia-oxidation', atom: 'N' }))).toBeCloseTo(0.99, 6)
})
