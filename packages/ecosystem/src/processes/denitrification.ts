import { bed, outside, water } from '../accounts/index.ts'
import { amount, concentration, fact, move, process, setting } from '../declare/index.ts'
import { hasRockOrSand, type InSystem, nitrate, rockArea, sandArea, temperature } from './readings.ts'
import { porousRockShare } from './rock-kinds.ts'

/**
 * The nitrate way: what the water above offers, the room without oxygen and the organic carbon there are
 * resistances to one rate. Settled waste that rots there burns with nitrate in place of oxygen, so its
 * carbon is booked once, by mineralisation; dosed carbon is booked here.
 */
export const denitrification = process<InSystem>({
  id: 'denitrification',
  title: 'Denitrification in sand and rock',
  says: 'Where oxygen has gone, bacteria burn organic matter with nitrate and set nitrogen gas free.',
  source: 'seitzinger-1988',
  each: (system) => (hasRockOrSand(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    nitrate,
    temperature,
    labile: concentration(water.labile, 'C'),
    wasteFast: amount(bed.fast, 'C'),
    wasteSlow: amount(bed.slow, 'C'),
    sandArea: setting('sand area', 'm²', ({ system }, facts) => sandArea(system, facts)),
    rockArea: setting(
      'porous rock area',
      'm²',
      ({ system }, facts) => rockArea(system, facts) * porousRockShare(system.rock),
    ),
    depth: setting('sand depth', 'mm', ({ system }) => 10 * (system.sand?.depth_cm ?? 0)),
  },
  parameters: {
    sandRate: fact('den.sand', 'µmol m⁻² d⁻¹'),
    rockRate: fact('den.live_rock', 'µmol m⁻² d⁻¹'),
    half: fact('den.ks', 'µmol L⁻¹'),
    oxygenDepth: fact('den.o2_depth.sand', 'mm'),
    halfDepth: fact('den.sand_depth_half', 'mm'),
    warming: fact('den.q10', '1'),
    carbonForNitrogen: fact('den.c_per_n', '1'),
    anoxicShare: fact('den.anoxic_share', '1'),
    rotsFast: fact('min.detritus.k_fast', 'd⁻¹'),
    rotsSlow: fact('min.detritus.k_slow', 'd⁻¹'),
    rotWarming: fact('min.q10', '1'),
    transfer: fact('coral.s_nh4', 'L m⁻² d⁻¹'),
  },
  terms: {
    room: {
      is: 'sandRate * sandArea * monod(positive(depth - oxygenDepth), halfDepth) + rockRate * rockArea',
      unit: 'µmol d⁻¹',
    },
    wanted: { is: 'room * q10(warming, temperature) * monod(nitrate, half)', unit: 'µmol d⁻¹' },
    fromWaste: {
      is: 'anoxicShare * q10(rotWarming, temperature) * (rotsFast * wasteFast + rotsSlow * wasteSlow)',
      unit: 'µmol d⁻¹',
    },
    fromWater: { is: 'anoxicShare * transfer * (sandArea + rockArea) * labile', unit: 'µmol d⁻¹' },
    carbon: { is: '(fromWaste + fromWater) / carbonForNitrogen', unit: 'µmol d⁻¹' },
    // The scarcer of room and carbon rules, without a corner between them.
    rate: { is: 'wanted * part(carbon, wanted + carbon)', unit: 'µmol d⁻¹' },
  },
  transfers: [
    move({ atom: 'N', from: water.nitrate, to: outside.air, rate: 'rate' }),
    move({
      atom: 'C',
      from: water.labile,
      to: outside.inorganicCarbon,
      rate: 'rate * carbonForNitrogen * part(fromWater, fromWaste + fromWater)',
    }),
  ],
})
