import { expect, test } from 'vitest'
import { run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

test('two litres a day of fifty leave exp(-V/volume) of what was there', () => {
  const { course } = run({
    system: { ...box, equipment: [{ kind: 'continuous water change', L_per_day: 2 }] },
    days: 30,
  })
  const nitrate = course('water.nitrate/N')
  const expected = Math.exp(-60 / 50)
  // Within what the error control allows over thirty days.
  expect(Math.abs(nitrate[30] / nitrate[0] / expected - 1)).toBeLessThan(0.02)
})

test('the new water brings what source water and salt carry, so nitrate ends at theirs', () => {
  const { concentrations } = run({
    system: {
      ...box,
      source_water: { NO3_mg_L: 4, PO4_mg_L: 0 },
      salt_mix: { NO3_mg_L: 1, PO4_mg_L: 0 },
      equipment: [{ kind: 'continuous water change', L_per_day: 10 }],
    },
    days: 60,
    opening: { nitrate_mg_L: 30, phosphate_mg_L: 0 },
  })
  expect((concentrations('water.nitrate/N')[60] * 62.005) / 1000).toBeCloseTo(5, 2)
})
