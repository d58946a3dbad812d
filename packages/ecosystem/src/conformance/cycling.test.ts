import { molarMass } from '@holdfast/quantities'
import { describe, expect, test } from 'vitest'
import type { System } from '../system.ts'
import { nothingUnexplained, type Run, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'

/** 2 mg/L of ammonia nitrogen in 200 L, as ammonium chloride. */
const dose_g = 1.528
const dosed = (dose_g / molarMass('NH4Cl')) * 1e6
const doseOn = (day: number) =>
  ({ day: day + 0.01, kind: 'dose', substance: 'ammonium chloride', mass_g: dose_g }) as const

/** A dark tank of 200 L with 20 kg of quarried rock, of which some came alive. */
const young = (seed_kg: number, temperature_C: number): System => ({
  ...box,
  temperature_C,
  vessels: [{ id: 'display', kind: 'display', volume_L: 200 }],
  rock: [
    { kind: 'quarried dry', mass_kg: 20 - seed_kg, age_days: 0 },
    ...(seed_kg > 0 ? [{ kind: 'cured live' as const, mass_kg: seed_kg, age_days: 0 }] : []),
  ],
  surfaces: [{ ...plate, light_umol_m2_s: 0, age_days: 0 }],
})

const cycle = (seed_kg: number, temperature_C: number, doses: readonly number[] = [0]): Run =>
  run({
    system: young(seed_kg, temperature_C),
    days: 120,
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0 },
    facts: nothingUnexplained,
    events: doses.map(doseOn),
  })

/** First day after the last dose on which less than a twentieth of one is left as ammonia and as nitrite. */
function cleared({ course }: Run, dosedOn = 0): number {
  const nitrite = course('water.nitrite/N')
  return course('water.ammonia/N').findIndex(
    (ammonia, day) => day > dosedOn && Math.max(ammonia, nitrite[day]) < dosed / 20,
  )
}

const dayOfMost = ({ course }: Run, id: string): number => course(id).indexOf(Math.max(...course(id)))

describe.each([
  ['without seed', 0, 18],
  ['without seed', 0, 27],
  ['with a seed of live rock', 0.25, 18],
  ['with a seed of live rock', 0.25, 27],
])('a cycle %s (%d kg) at %d °C', (_, seed_kg, temperature_C) => {
  const one = cycle(seed_kg, temperature_C)

  test('has its peaks in order: ammonia, nitrite, nitrate', () => {
    expect(dayOfMost(one, 'water.ammonia/N')).toBeLessThan(dayOfMost(one, 'water.nitrite/N'))
    expect(dayOfMost(one, 'water.nitrite/N')).toBeLessThan(dayOfMost(one, 'water.nitrate/N'))
  })

  test('never shows more nitrogen in the water than was put in', () => {
    const water = ['ammonia', 'nitrite', 'nitrate'].map((name) => one.course(`water.${name}/N`))
    for (const day of one.days)
      expect(water.reduce((sum, of) => sum + of[day], 0)).toBeLessThan(dosed * (1 + 1e-6))
  })
})

// Common practice: seeded 3 to 6 weeks, dry rock 5 to 10; over all draws of the facts see validation/cycle.ts.
test('a seed of live rock brings a cycle from 5 to 10 weeks down to 3 to 6', () => {
  expect(cleared(cycle(0, 26))).toBeGreaterThanOrEqual(35)
  expect(cleared(cycle(0, 26))).toBeLessThanOrEqual(70)
  expect(cleared(cycle(0.1, 26))).toBeGreaterThanOrEqual(21)
  expect(cleared(cycle(0.1, 26))).toBeLessThanOrEqual(42)
})

test.each([0, 0.25])('a cycle with %d kg of live rock is slower at 20 °C than at 26', (seed_kg) => {
  expect(cleared(cycle(seed_kg, 20))).toBeGreaterThan(1.3 * cleared(cycle(seed_kg, 26)))
})

// Keepers see a second dose clear in a day or two (common practice). Cells that grew on one dose oxidise their growth
// per day times that dose, at most half of it, so here it takes four to five days from a seed and a week on dry rock;
// only growth faster than nit.aob.mumax allows at its high end would mend that. Two more doses do the rest.
test.each([0, 0.25])(
  'after a cycle with %d kg of live rock each dose clears no later than the last, the fourth in three days',
  (seed_kg) => {
    const doses = [0]
    const took: number[] = []
    for (let n = 0; n < 4; n++) {
      const last = doses[doses.length - 1]
      const done = cleared(cycle(seed_kg, 26, doses), last)
      took.push(done - last)
      doses.push(done)
    }
    expect(took[1]).toBeLessThan(took[0] / 4)
    expect(took[2]).toBeLessThanOrEqual(took[1])
    expect(took[3]).toBeLessThanOrEqual(3)
  },
)
