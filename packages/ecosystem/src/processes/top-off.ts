import { outside, water } from '../accounts/index.ts'
import { move, process, setting } from '../declare/index.ts'
import { broughtBy, type Ion } from './brought-by-water.ts'
import type { InSystem } from './readings.ts'

/** What a litre of source water carries. */
const sourced = (id: string, ion: Ion) =>
  setting<InSystem>(id, 'µmol L⁻¹', ({ system }, facts) => broughtBy(system.source_water, ion, facts))

export const sourceNitrate = sourced('source nitrate', 'NO3')
export const sourcePhosphate = sourced('source phosphate', 'PO4')
export const sourceSilicate = sourced('source silicate', 'SiO2')

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
