import { describe, expect, test } from 'vitest'
import type { Ledger } from '../ledger-types.ts'
import type { System } from '../system.ts'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'

const dosed = (mL_per_day: number, more: Partial<System> = {}): System => ({
  ...box,
  vessels: [{ id: 'display', kind: 'display', volume_L: 300 }],
  equipment: [
    { kind: 'skimmer', rated_for_L: 300 },
    { kind: 'organic carbon dosing', substance: 'ethanol', mL_per_day },
  ],
  ...more,
})
const nitrateAfter = (mL_per_day: number, phosphate_mg_L: number, days = 28): number => {
  const { concentrations } = run({
    system: dosed(mL_per_day),
    days,
    opening: { nitrate_mg_L: 20, phosphate_mg_L },
    facts: nothingUnexplained,
  })
  return (concentrations('water.nitrate/N')[days] * 62.005) / 1000
}

/** Nitrogen of cells and of what they left behind that crosses the border. */
const leaving = ({ rows }: Ledger) =>
  rows.filter(
    ({ from, to, atom }) =>
      atom === 'N' && /^(water\.(bacteria|particles)|bed\.)/.test(from) && to.startsWith('outside.'),
  )

describe('bacteria on dosed carbon', () => {
  test('lower nitrate where there is phosphate, the more the more is dosed', () => {
    expect(nitrateAfter(1, 1)).toBeLessThan(19)
    expect(nitrateAfter(2, 1)).toBeLessThan(nitrateAfter(1, 1))
  })

  test('without phosphate twice the carbon moves nitrate by less than a step of a kit', () => {
    // 2 mg/L: a step of usual kits (common practice).
    expect(Math.abs(nitrateAfter(8, 0.005) - nitrateAfter(4, 0.005))).toBeLessThan(2)
    expect(nitrateAfter(8, 0.005)).toBeGreaterThan(17)
  })

  // Goldman et al. 1987 (abstract read) 45:9:1; the ceiling by hand: 0.52 g C of a gram of ethanol at a yield
  // of 0.45 binds at most 0.055 g N.
  test('bind at most what the carbon allows: 0.055 g of nitrogen for a gram of ethanol', () => {
    const { ledger } = run({
      system: dosed(1),
      days: 28,
      opening: { nitrate_mg_L: 20, phosphate_mg_L: 1 },
      facts: nothingUnexplained,
    })
    const out = moved(ledger, { atom: 'N', to: 'outside.skimmate' }) * 14.007e-6
    expect(out / (28 * 0.789)).toBeLessThan(0.055)
    expect(out).toBeGreaterThan(0)
  })

  test('that no foam takes stay: without a skimmer nothing is exported', () => {
    const { ledger } = run({
      system: { ...dosed(1), equipment: [{ kind: 'organic carbon dosing', mL_per_day: 1 }] },
      days: 28,
      opening: { nitrate_mg_L: 20, phosphate_mg_L: 1 },
    })
    expect(leaving(ledger)).toEqual([])
  })

  test('under an ultraviolet lamp become waste and do not leave', () => {
    const { ledger } = run({
      system: {
        ...dosed(1),
        equipment: [
          { kind: 'organic carbon dosing', mL_per_day: 1 },
          { kind: 'ultraviolet lamp', flow_L_per_hour: 300 },
        ],
      },
      days: 28,
      opening: { nitrate_mg_L: 20, phosphate_mg_L: 1 },
    })
    expect(moved(ledger, { process: 'ultraviolet', atom: 'N', to: 'water.particles' })).toBeGreaterThan(0)
    expect(leaving(ledger)).toEqual([])
  })
})

// Michaud et al. 2006, Aquac Eng 34:224 (abstract read): ammonia removal of a submerged filter at 2 mg N/L fell by
// 30 % at a C/N of 0.5 and by 50 % at more. Here 10,000 L hold the ammonia up over 20 kg of grown-in rock.
describe('nitrification beside bacteria on carbon', () => {
  const oxidised = (mL_per_day: number): number => {
    const { ledger } = run({
      system: {
        ...dosed(mL_per_day),
        vessels: [{ id: 'display', kind: 'display', volume_L: 10_000 }],
        equipment: [{ kind: 'organic carbon dosing', substance: 'ethanol', mL_per_day }],
        rock: [{ kind: 'quarried dry', mass_kg: 20, age_days: 0 }],
        surfaces: [{ ...plate, light_umol_m2_s: 0, area_m2: 100, age_days: 0 }],
      },
      days: 150,
      opening: { nitrate_mg_L: 5, phosphate_mg_L: 1, ammonia_mg_N_L: 2 },
      facts: { ...nothingUnexplained, 'nit.seed_aob': 0.3 },
      events: Array.from({ length: 29 }, (_, week) => ({
        day: 5 * (week + 1),
        kind: 'dose' as const,
        substance: 'ammonium chloride' as const,
        mass_g: 16,
      })),
      marks: [100, 150],
    })
    return moved(ledger, { process: 'ammonia-oxidation', atom: 'N' })
  }
  const alone = oxidised(0)

  test.each([1, 4])('falls by a third to a half with %i mL of ethanol a day', (mL) => {
    const fall = 1 - oxidised(mL) / alone
    expect(fall).toBeGreaterThan(0.25)
    expect(fall).toBeLessThan(0.6)
  })
})
