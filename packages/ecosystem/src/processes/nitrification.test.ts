import { molarMass } from '@holdfast/quantities'
import { describe, expect, test } from 'vitest'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box, plate, reef } from '../testing/systems.ts'

const young = {
  ...box,
  vessels: [{ id: 'display', kind: 'display' as const, volume_L: 200 }],
  rock: [{ kind: 'quarried dry' as const, mass_kg: 25, age_days: 0 }],
  surfaces: [{ ...plate, light_umol_m2_s: 0, age_days: 0 }],
}

describe('a cycle with ammonium chloride on new rock', () => {
  const dosed = (1.5 / molarMass('NH4Cl')) * 1e6
  const { marks, model } = run({
    system: young,
    days: 120,
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0 },
    facts: nothingUnexplained,
    events: [{ day: 0, kind: 'dose', substance: 'ammonium chloride', mass_g: 1.5 }],
    marks: Array.from({ length: 121 }, (_, day) => day),
  })

  test('there is never more nitrogen than what went in', () => {
    const nitrogen = (states: Float64Array): number =>
      model.states.reduce(
        (sum, state, k) =>
          state.kind === 'atoms' && state.atom === 'N' && state.account.side === 'inside'
            ? sum + states[k]
            : sum,
        0,
      )
    const seed = nitrogen(marks[0].states)
    for (const { states } of marks) expect(nitrogen(states)).toBeLessThan((dosed + seed) * (1 + 1e-6))
  })
})

test('an old tank keeps ammonia and nitrite under 5 µmol/L though it is fed every day', () => {
  const { concentrations } = run({ system: reef, days: 365, facts: nothingUnexplained })
  for (const id of ['water.ammonia/N', 'water.nitrite/N'])
    expect(Math.max(...concentrations(id).slice(30))).toBeLessThan(5)
})

// N1a: Nijhof & Bovendeur 1990, Aquaculture 87:133 (abstract read): sea water filters at 24 °C take at
// most 0.28 g N per m² and day, and start much slower than fresh water ones, with nitrite building up.
// Model: 20 kg of rock, held at 2 mg N/L (143 µmol/L) by a tank so large that it is not drawn down.
describe('a new film held at 2 mg/L of ammonia nitrogen', () => {
  const { course } = run({
    system: {
      ...young,
      vessels: [{ id: 'display', kind: 'display', volume_L: 1e7 }],
      surfaces: [{ ...plate, light_umol_m2_s: 0, age_days: 0, area_m2: 1000 }],
      temperature_C: 24,
      // So acid that none of the ammonia is gas.
      pH: 6,
    },
    days: 300,
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0, ammonia_mg_N_L: 2 },
    facts: nothingUnexplained,
  })
  const nitrite = course('water.nitrite/N')
  const oxidised = course('water.nitrate/N').map((nitrate, day) => nitrate + nitrite[day])
  // µmol per day and m² of film, over a week
  const film_m2 = 25 * 0.15
  const rates = oxidised.map((amount, day) => (day < 7 ? 0 : (amount - oxidised[day - 7]) / 7 / film_m2))
  const most = Math.max(...rates)

  test('takes at its best what the filters took, 0.28 g N per m² and day, within the prior', () => {
    const grams = (most * 14.007) / 1e6
    expect(grams).toBeGreaterThan(0.15)
    expect(grams).toBeLessThan(0.45)
  })

  test('passes half of that after more than three weeks', () => {
    expect(rates.findIndex((rate) => rate > most / 2)).toBeGreaterThan(21)
  })

  test('has ammonia oxidised before nitrite is', () => {
    const halfGrown = (group: string): number => {
      const fast = course(`rock.${group}-fast/N`)
      const all = course(`rock.${group}-slow/N`).map((slow, day) => slow + fast[day])
      return all.findIndex((held) => held > Math.max(...all) / 2)
    }
    expect(halfGrown('oxidisers')).toBeLessThan(halfGrown('nitrite-oxidisers'))
  })

  // N1b, more flow raises the total and lowers the share per pass: there is no filter with a flow of its
  // own in the model; the water's way to the surface is one number for rock and sand.
  test.todo('takes more in all and a smaller share per pass with more flow')
})

test('without rock and sand no ammonia is oxidised', () => {
  const { ledger } = run({
    system: box,
    days: 60,
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0, ammonia_mg_N_L: 1 },
  })
  for (const to of ['water.nitrite', 'water.nitrate']) expect(moved(ledger, { atom: 'N', to })).toBe(0)
})
