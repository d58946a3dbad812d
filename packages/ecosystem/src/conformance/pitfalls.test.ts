/** Slips that builders of such models make, where no process has the check beside it. */
import { convert, molarMass } from '@holdfast/quantities'
import { describe, expect, test } from 'vitest'
import { moved, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'

test('evaporation made up with pure water leaves every amount as it is', () => {
  const { course } = run({ system: { ...box, evaporation_L_per_day: 2 }, days: 30 })
  for (const id of ['water.nitrate/N', 'water.phosphate/P'])
    expect(course(id)[30] / course(id)[0]).toBeCloseTo(1, 12)
})

test('before each change nitrate ends at what is added in between over the part changed, plus the new water', () => {
  const dose_g = 0.05
  const days = Array.from({ length: 100 }, (_, day) => day)
  const { concentrations } = run({
    system: box,
    days: 100,
    samples: [99.4],
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0 },
    events: days.flatMap((day) => [
      { day: day + 0.2, kind: 'dose' as const, substance: 'sodium nitrate' as const, mass_g: dose_g },
      {
        day: day + 0.5,
        kind: 'water change' as const,
        volume_L: 10,
        water: { NO3_mg_L: 3, PO4_mg_L: 0 },
      },
    ]),
  })
  const added_mg_L = (dose_g * 1000 * molarMass('NO3')) / molarMass('NaNO3') / 50
  expect(convert(concentrations('water.nitrate/N')[0], 'µmol L⁻¹', 'mg NO3 L⁻¹')).toBeCloseTo(
    added_mg_L / 0.2 + 3,
    6,
  )
})

// 45 % protein at 6.25 g of protein for a gram of N; thawed mysids at 5.6 % protein (within the 5 to 10.5 % of the feeds).
test.each([
  { kind: 'dry pellet', N_mass_fraction: 0.45 / 6.25, mg: 72 },
  { kind: 'frozen mysids', N_mass_fraction: 0.009, mg: 9 },
])('a gram of $kind brings $mg mg of nitrogen', ({ kind, N_mass_fraction, mg }) => {
  const { ledger } = run({
    system: { ...box, feeds: [{ kind, g_per_day: 1, N_mass_fraction, P_mass_fraction: 0.001 }] },
    days: 1,
  })
  expect((moved(ledger, { atom: 'N', from: 'outside.feed' }) * molarMass('N')) / 1000).toBeCloseTo(mg, 6)
})

describe('algae taken off by hand', () => {
  const bare = {
    ...box,
    surfaces: [{ ...plate, light_umol_m2_s: 0 }],
    algae: [{ kind: 'hair_green', surface: 'plate', cover: 0.5 }],
  }
  const removed = (leftToDrift: boolean) =>
    run({
      system: bare,
      days: 1.001,
      events: [
        { day: 1, kind: 'hand removal', surface: 'plate', algae: 'hair_green', share: 0.9, leftToDrift },
      ],
    }).ledger
  const taken = (atom: string, leftToDrift: boolean, to: string): number =>
    moved(removed(leftToDrift), { process: 'hand removal', atom, to })

  test.each(['N', 'P', 'C'])(
    'and left to drift are waste of the same %s that a siphon would take out',
    (atom) => {
      expect(taken(atom, false, 'outside.hand-removed')).toBeGreaterThan(0)
      expect(taken(atom, true, 'water.particles')).toBeCloseTo(taken(atom, false, 'outside.hand-removed'), 6)
      expect(taken(atom, true, 'outside.hand-removed')).toBe(0)
      expect(taken(atom, false, 'water.particles')).toBe(0)
    },
  )
})

// Freundlich with an exponent near a third (Golterman 1995, abstract read): a thirtieth of the phosphate, a third of the load.
test('ferric media hold well under half as much at 0.03 mg/L phosphate as at 1 mg/L', () => {
  const held = (phosphate_mg_L: number): number =>
    run({
      system: {
        ...box,
        vessels: [{ id: 'display', kind: 'display', volume_L: 10_000 }],
        equipment: [{ kind: 'ferric media reactor', mass_g: 10, flow_L_per_hour: 1000 }],
      },
      days: 60,
      opening: { nitrate_mg_L: 0, phosphate_mg_L },
    }).course('media.ferric/P')[60]
  expect(held(0.03)).toBeGreaterThan(0)
  expect(held(0.03)).toBeLessThan(0.45 * held(1))
})
