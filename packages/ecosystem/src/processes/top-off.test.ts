import { convert } from '@holdfast/quantities'
import { expect, test } from 'vitest'
import { run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

test('tap water of 40 mg/L nitrate, 1.5 L a day on 50 L, raises nitrate by 1.2 mg/L a day', () => {
  const { concentrations } = run({
    system: { ...box, evaporation_L_per_day: 1.5, source_water: { NO3_mg_L: 40, PO4_mg_L: 0 } },
    days: 10,
    opening: { nitrate_mg_L: 5, phosphate_mg_L: 0 },
  })
  const nitrate = concentrations('water.nitrate/N').map((value) => convert(value, 'µmol L⁻¹', 'mg NO3 L⁻¹'))
  nitrate.forEach((value, day) => {
    expect(value).toBeCloseTo(5 + 1.2 * day, 4)
  })
})
