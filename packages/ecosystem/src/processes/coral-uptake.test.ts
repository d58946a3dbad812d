import { catalogueAlone, fact } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { notModelled } from '../assemble/not-modelled.ts'
import type { System } from '../system.ts'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box, plate, reef } from '../testing/systems.ts'

const wide: System = {
  ...box,
  vessels: [{ id: 'display', kind: 'display', volume_L: 20_000 }],
  surfaces: [plate],
  corals: { kind: 'mixed', area_m2: 1 },
}
const rich = { nitrate_mg_L: 5, phosphate_mg_L: 0.1 }

// Nutrients of the catalogue: gross rates of uptake alone would strip a tank; what stays is growth times tissue.
describe('a stocked, grown-in reef', () => {
  const { ledger, course } = run({
    system: { ...reef, corals: { kind: 'mixed', area_m2: 1.5 } },
    days: 120,
    facts: nothingUnexplained,
    marks: [90, 120],
  })

  test('keeps some per cent to a fifth of feed N in its corals', () => {
    const nitrogen = course('animals.corals/N')
    const kept = (nitrogen[120] - nitrogen[90]) / moved(ledger, { process: 'feeding', atom: 'N' })
    expect(kept).toBeGreaterThan(0.002)
    expect(kept).toBeLessThan(0.2)
  })

  test('has uptake less what is given off equal to growth and store', () => {
    const nitrogen = course('animals.corals/N')
    const taken =
      moved(ledger, { process: 'coral-uptake', atom: 'N', to: 'animals.corals' }) +
      moved(ledger, { process: 'coral-uptake', atom: 'N', to: 'water.labile' })
    const givenOff = moved(ledger, { process: 'coral-uptake', atom: 'N', to: 'water.labile' })
    expect(taken - givenOff).toBeCloseTo(nitrogen[120] - nitrogen[90], 4)
    // The fact coral.organic_share: 5 to 50 %.
    expect(givenOff / taken).toBeGreaterThan(0.05)
    expect(givenOff / taken).toBeLessThan(0.5)
  })
})

test('a store fills within days to weeks and then uptake follows growth', () => {
  // Short of N and P: 0.7 of the usual 80 g per m² at 5 % N and N:P 25 (facts coral.*).
  const starved = ((0.7 * 80 * 0.05) / 14.007) * 1e6
  const { course } = run({
    system: { ...wide, vessels: [{ id: 'display', kind: 'display', volume_L: 1e6 }] },
    days: 240,
    // 5 µmol/L of ammonium
    opening: { ...rich, ammonia_mg_N_L: 0.07 },
    facts: nothingUnexplained,
    start: { 'animals.corals/N': starved, 'animals.corals/P': starved / 25 },
  })
  const nitrogen = course('animals.corals/N')
  const perDay = (from: number): number => (nitrogen[from + 7] - nitrogen[from]) / 7
  expect(perDay(0)).toBeGreaterThan(1.5 * perDay(200))
})

// Godinot et al. 2009, Limnol Oceanogr 54:1627 (abstract read): corals starved for eight weeks took 4.6 times as much
// phosphate as fed ones.
test('starved corals take several times as much phosphate as fed ones', () => {
  const taken = (share: number): number => {
    const usual = run({ system: wide, days: 1, opening: rich }).model
    const phosphorus = run({ system: wide, days: 0.1, opening: rich }).samples[0]
    const at = usual.states.findIndex(
      (entry) => entry.kind === 'atoms' && entry.account.id === 'animals.corals' && entry.atom === 'P',
    )
    const { ledger } = run({
      system: wide,
      days: 0.1,
      opening: rich,
      start: { 'animals.corals/P': phosphorus[at] * share },
    })
    return moved(ledger, { process: 'coral-uptake', atom: 'P', to: 'animals.corals' })
  }
  // Full is 1.3 times usual tissue, starved 0.65 times (facts coral.store_most and coral.store_least).
  expect(taken(0.65) / taken(1.15)).toBeGreaterThan(2)
  expect(taken(0.65) / taken(1.15)).toBeLessThan(8)
})

// Grover et al. 2003, Limnol Oceanogr 48:2266 (abstract read): in 5 µmol/L of ammonium a tenth of nitrate uptake was left.
test('ammonium shuts nitrate uptake nearly off', () => {
  const nitrateTaken = (ammonia_mg_N_L: number): number =>
    moved(run({ system: wide, days: 0.1, opening: { ...rich, ammonia_mg_N_L } }).ledger, {
      process: 'coral-uptake',
      atom: 'N',
      from: 'water.nitrate',
    })
  const left = nitrateTaken((5 * 14.007) / 1000) / nitrateTaken(0)
  expect(left).toBeGreaterThan(fact('coral.no3_nh4_inhib').low)
  expect(left).toBeLessThan(fact('coral.no3_nh4_inhib').high)
})

test('in the dark corals fix nothing and take no nitrate', () => {
  const { ledger } = run({
    system: { ...wide, surfaces: [{ ...plate, light_umol_m2_s: 0 }] },
    days: 5,
    opening: rich,
  })
  expect(moved(ledger, { process: 'coral-uptake', atom: 'C' })).toBe(0)
  expect(moved(ledger, { process: 'coral-uptake', atom: 'N', from: 'water.nitrate' })).toBe(0)
})

test('corals whose light nobody tells are named in the ledger', () => {
  expect(notModelled({ ...wide, surfaces: [] }, catalogueAlone)).toEqual([
    'coral uptake: no surface with its light is told',
  ])
  expect(notModelled(wide, catalogueAlone)).toEqual([])
})
