import { inTheWater, outside, water } from '../accounts/index.ts'
import { carry, move, setting, type Transfer } from '../declare/index.ts'
import { broughtBy, type Ion } from './brought-by-water.ts'
import type { InSystem } from './readings.ts'
import { volumeOf, waterVolume } from './readings.ts'
import { sourceNitrate, sourcePhosphate, sourceSilicate } from './top-off.ts'

/** Settings that an event fills where the new water is named as a whole. */
export const saltNitrateSetting = 'salt nitrate'
export const saltPhosphateSetting = 'salt phosphate'
export const saltAmmoniaSetting = 'salt ammonia'

const salted = (id: string, ion: Ion) =>
  setting<InSystem>(id, 'µmol L⁻¹', ({ system }, facts) => broughtBy(system.salt_mix, ion, facts))

/** What an exchange of water reads: how much there is, and what a litre of new water carries. */
export const newWater = {
  volume: setting<InSystem>(waterVolume, 'L', ({ system }) => volumeOf(system)),
  sourceNitrate,
  sourcePhosphate,
  sourceSilicate,
  saltNitrate: salted(saltNitrateSetting, 'NO3'),
  saltPhosphate: salted(saltPhosphateSetting, 'PO4'),
  saltSilicate: salted('salt silicate', 'SiO2'),
  saltAmmonia: salted(saltAmmoniaSetting, 'NH4'),
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
  move({ atom: 'N', from: outside.salt, to: water.ammonia, rate: 'changed * saltAmmonia' }),
  move({ atom: 'P', from: outside.salt, to: water.phosphate, rate: 'changed * saltPhosphate' }),
  move({ atom: 'Si', from: outside.salt, to: water.silicate, rate: 'changed * saltSilicate' }),
]
