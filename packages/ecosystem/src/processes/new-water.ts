import { convert } from '@holdfast/quantities'
import { inTheWater, outside, water } from '../accounts/index.ts'
import { carry, move, setting, type Transfer } from '../declare/index.ts'
import type { InSystem } from './readings.ts'
import { volumeOf, waterVolume } from './readings.ts'
import { sourceNitrate, sourcePhosphate, sourceSilicate } from './top-off.ts'

/** Settings that an event fills where the new water is named as a whole. */
export const saltNitrateSetting = 'salt nitrate'
export const saltPhosphateSetting = 'salt phosphate'

/** What an exchange of water reads: how much there is, and what a litre of new water carries. */
export const newWater = {
  volume: setting<InSystem>(waterVolume, 'L', ({ system }) => volumeOf(system)),
  sourceNitrate,
  sourcePhosphate,
  sourceSilicate,
  saltNitrate: setting<InSystem>(saltNitrateSetting, 'µmol L⁻¹', ({ system }) =>
    convert(system.salt_mix.NO3_mg_L, 'mg NO3 L⁻¹', 'µmol L⁻¹'),
  ),
  saltPhosphate: setting<InSystem>(saltPhosphateSetting, 'µmol L⁻¹', ({ system }) =>
    convert(system.salt_mix.PO4_mg_L, 'mg PO4 L⁻¹', 'µmol L⁻¹'),
  ),
  saltSilicate: setting<InSystem>('salt silicate', 'µmol L⁻¹', ({ system }) =>
    convert(system.salt_mix.SiO2_mg_L ?? 0, 'mg SiO2 L⁻¹', 'µmol L⁻¹'),
  ),
}

/** Old water out, new water in; `changed` is what is exchanged, in litres or litres a day. */
export const exchangeOfWater: readonly Transfer<InSystem>[] = [
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
  move({ atom: 'Si', from: outside.sourceWater, to: water.silicate, rate: 'changed * sourceSilicate' }),
  move({ atom: 'N', from: outside.salt, to: water.nitrate, rate: 'changed * saltNitrate' }),
  move({ atom: 'P', from: outside.salt, to: water.phosphate, rate: 'changed * saltPhosphate' }),
  move({ atom: 'Si', from: outside.salt, to: water.silicate, rate: 'changed * saltSilicate' }),
]
