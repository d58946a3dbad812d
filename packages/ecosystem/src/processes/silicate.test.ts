import { expect, test } from 'vitest'
import { moved, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'

const glassed = { ...box, surfaces: [{ ...plate, id: 'glass', kind: 'glass' as const }] }

test('top-off with water of 8 mg/L SiO2, 1.5 L a day on 50 L, raises silicate by 4 µmol/L a day', () => {
  const { concentrations } = run({
    system: {
      ...box,
      evaporation_L_per_day: 1.5,
      source_water: { NO3_mg_L: 0, PO4_mg_L: 0, SiO2_mg_L: 8 },
    },
    days: 10,
  })
  const silicate = concentrations('water.silicate/Si')
  expect(silicate[10] - silicate[0]).toBeCloseTo((10 * 1.5 * 8000) / 60.083 / 50, 6)
})

test('glass gives off some tens of µmol per m² and day at most, and less the richer the water', () => {
  const given = (silicate: number): number =>
    moved(run({ system: glassed, days: 1, start: { 'water.silicate/Si': silicate * 50 } }).ledger, {
      process: 'silicate',
      atom: 'Si',
      from: 'outside.minerals',
    })
  expect(given(0)).toBeGreaterThan(1)
  expect(given(0)).toBeLessThan(60)
  expect(given(300)).toBeLessThan(given(0))
})

// Arndt & Regnier 2007, Biogeosciences 4:331 (abstract read): 0.006 to 0.36 per day.
test('the silica of dead diatoms is dissolved within weeks to months', () => {
  const { course } = run({ system: box, days: 120, start: { 'bed.silica/Si': 100 } })
  const opal = course('bed.silica/Si')
  expect(opal[10]).toBeGreaterThan(30)
  expect(opal[120]).toBeLessThan(10)
})
