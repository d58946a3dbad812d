import { algaeKind, algaeKinds } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { nothingUnexplained, run } from '../testing/run.ts'
import { steadyGrowth } from '../testing/steady-growth.ts'
import { box, plate } from '../testing/systems.ts'

const plenty = 1e5

/** Concentration at which growth is half of what it is in plenty, by halving the span. */
function halfSaturation(growth: (concentration: number) => number): number {
  const half = growth(plenty) / 2
  let [low, high] = [1e-3, 1e3]
  for (let step = 0; step < 11; step++) {
    const middle = Math.sqrt(low * high)
    if (growth(middle) < half) low = middle
    else high = middle
  }
  return Math.sqrt(low * high)
}

// The tables tell growth against the water (kinds of algae in @holdfast/facts, from memory of the papers
// named there); stores and uptake between the two must not move it.
describe.each(algaeKinds().map(({ key }) => key))('steady growth of %s against the water', (kind) => {
  const { halfSaturationN, halfSaturationP } = algaeKind(kind)

  test('is half in as much nitrogen as the table says, within a factor of 1.5', () => {
    const half = halfSaturation((N) => steadyGrowth(kind, { N, P: plenty }))
    expect(half / halfSaturationN.typical).toBeGreaterThan(1 / 1.5)
    expect(half / halfSaturationN.typical).toBeLessThan(1.5)
  })

  test('is half in as much phosphate as the table says, within a factor of 1.5', () => {
    const half = halfSaturation((P) => steadyGrowth(kind, { N: plenty, P }))
    expect(half / halfSaturationP.typical).toBeGreaterThan(1 / 1.5)
    expect(half / halfSaturationP.typical).toBeLessThan(1.5)
  })
})

test('phosphate of 0.03 mg/L slows turf to about 0.6 of its growth and no further', () => {
  // 94.97 g/mol PO4; tabled half-saturation 0.2 µmol/L gives 0.61
  const share =
    steadyGrowth('turf', { N: plenty, P: (0.03 / 94.97) * 1000 }) /
    steadyGrowth('turf', { N: plenty, P: plenty })
  expect(share).toBeGreaterThan(0.55)
  expect(share).toBeLessThan(0.75)
})

// 'Lean' tank water is seldom lean for algae: 2 mg/L NO3 is 32 µmol/L, ten times a half-saturation.
const lean = { nitrate_mg_L: 2, phosphate_mg_L: 0.02 }
const lit = {
  ...box,
  // So much water that what grows does not draw it down.
  vessels: [{ id: 'display', kind: 'display' as const, volume_L: 100_000 }],
  surfaces: [plate],
  algae: [{ kind: 'hair_green', surface: 'plate', cover: 0.01 }],
}
const coverOf = (snails: number) =>
  run({
    system: {
      ...lit,
      animals: [{ kind: 'trochus snail', taxon: 'Trochus histrio', count: snails, role: 'grazer' }],
    },
    days: 180,
    opening: lean,
    facts: nothingUnexplained,
  }).course('cover.plate.hair_green.open')

test('a lit surface that nobody grazes grows over in poor water', () => {
  expect(coverOf(0).at(-1)).toBeGreaterThan(0.5)
})

test('the same surface in the same water stays bare under ten snails', () => {
  expect(coverOf(10).at(-1)).toBeLessThan(0.02)
})

test('in the dark nothing spreads and the stand respires away', () => {
  const dark = run({
    system: { ...lit, surfaces: [{ ...plate, light_umol_m2_s: 0 }] },
    days: 60,
    opening: lean,
    facts: nothingUnexplained,
  })
  const carbon = dark.course('surface.plate.hair_green.hidden/C')
  expect(carbon[60]).toBeLessThan(carbon[0] / 2)
  expect(dark.course('cover.plate.hair_green.open')[60]).toBeLessThanOrEqual(0.001)
})
