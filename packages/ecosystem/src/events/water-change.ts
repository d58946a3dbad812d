import { convert } from '@holdfast/quantities'
import { inTheWater, outside, water } from '../accounts/index.ts'
import { carry, move, process, setting } from '../declare/index.ts'
import type { InSystem } from '../processes/readings.ts'
import { volumeOf, waterVolume } from '../processes/readings.ts'
import { sourceNitrate, sourcePhosphate } from '../processes/top-off.ts'

/** Settings that an event fills just before it happens. */
export const changedVolume = 'water change volume'
export const saltNitrateSetting = 'salt nitrate'
export const saltPhosphateSetting = 'salt phosphate'

export const waterChange = process<InSystem>({
  id: 'water change',
  title: 'Water change',
  says: 'A share of all that is in the water leaves; the new water brings what source water and salt carry.',
  source: 'mass balance',
  event: true,
  each: (system) => [{ name: '', of: { system } }],
  reads: {
    changed: setting(changedVolume, 'L', () => 0),
    volume: setting(waterVolume, 'L', ({ system }) => volumeOf(system)),
    sourceNitrate,
    sourcePhosphate,
    saltNitrate: setting(saltNitrateSetting, 'µmol L⁻¹', ({ system }) =>
      convert(system.salt_mix.NO3_mg_L, 'mg NO3 L⁻¹', 'µmol L⁻¹'),
    ),
    saltPhosphate: setting(saltPhosphateSetting, 'µmol L⁻¹', ({ system }) =>
      convert(system.salt_mix.PO4_mg_L, 'mg PO4 L⁻¹', 'µmol L⁻¹'),
    ),
  },
  parameters: {},
  transfers: [
    ...inTheWater.map((account) =>
      carry<InSystem>({
        from: account,
        to: outside.discardedWater,
        atoms: account.atoms,
        rate: 'changed / volume',
      }),
    ),
    move({ atom: 'N', from: outside.sourceWater, to: water.nitrate, rate: 'changed * sourceNitrate' }),
    move({ atom: 'P', from: outside.sourceWater, to: water.phosphate, rate: 'changed * sourcePhosphate' }),
    move({ atom: 'N', from: outside.salt, to: water.nitrate, rate: 'changed * saltNitrate' }),
    move({ atom: 'P', from: outside.salt, to: water.phosphate, rate: 'changed * saltPhosphate' }),
  ],
})
