import { convert } from '@holdfast/quantities'
import { outside, water } from '../accounts/index.ts'
import { move, process, setting } from '../declare/index.ts'
import type { InSystem } from './readings.ts'

/** What a litre of source water carries. */
export const sourceNitrate = setting<InSystem>('source nitrate', 'µmol L⁻¹', ({ system }) =>
  convert(system.source_water.NO3_mg_L, 'mg NO3 L⁻¹', 'µmol L⁻¹'),
)
export const sourcePhosphate = setting<InSystem>('source phosphate', 'µmol L⁻¹', ({ system }) =>
  convert(system.source_water.PO4_mg_L, 'mg PO4 L⁻¹', 'µmol L⁻¹'),
)

export const sourceSilicate = setting<InSystem>('source silicate', 'µmol L⁻¹', ({ system }) =>
  convert(system.source_water.SiO2_mg_L ?? 0, 'mg SiO2 L⁻¹', 'µmol L⁻¹'),
)

export const topOff = process<InSystem>({
  id: 'top-off',
  title: 'Evaporation and top-off',
  says: 'Pure vapour leaves; the source water that replaces it brings what it carries, and that stays.',
  source: 'mass balance',
  each: (system) => [{ name: '', of: { system } }],
  reads: {
    evaporation: setting('evaporation', 'L d⁻¹', ({ system }) => system.evaporation_L_per_day),
    sourceNitrate,
    sourcePhosphate,
    sourceSilicate,
  },
  parameters: {},
  transfers: [
    move({ atom: 'N', from: outside.sourceWater, to: water.nitrate, rate: 'evaporation * sourceNitrate' }),
    move({
      atom: 'P',
      from: outside.sourceWater,
      to: water.phosphate,
      rate: 'evaporation * sourcePhosphate',
    }),
    move({ atom: 'Si', from: outside.sourceWater, to: water.silicate, rate: 'evaporation * sourceSilicate' }),
  ],
})
