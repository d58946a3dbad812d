import { convert } from '@holdfast/quantities'
import { expect, test } from 'vitest'
import { run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

const change = (day: number) => ({ day, kind: 'water change' as const, volume_L: 10 })

test('five changes of a fifth leave 32.8 % of what was there', () => {
  const { course } = run({ system: box, days: 6, events: [1, 2, 3, 4, 5].map(change) })
  const nitrate = course('water.nitrate/N')
  expect(nitrate[6] / nitrate[0]).toBeCloseTo(0.8 ** 5, 12)
})

test('a change with water named by the keeper brings that water and not the source', () => {
  const { concentrations } = run({
    system: { ...box, source_water: { NO3_mg_L: 50, PO4_mg_L: 1 } },
    days: 2,
    opening: { nitrate_mg_L: 10, phosphate_mg_L: 0.1 },
    events: [{ ...change(1), water: { NO3_mg_L: 5, PO4_mg_L: 0 } }],
  })
  expect(convert(concentrations('water.nitrate/N')[2], 'µmol L⁻¹', 'mg NO3 L⁻¹')).toBeCloseTo(9, 6)
})
