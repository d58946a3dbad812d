import { bedOfAlgae, darkDays, outside, water } from '../accounts/index.ts'
import { change, fact, move, process } from '../declare/index.ts'
import {
  type CultivatedBed,
  carbonOfAlga,
  litBed,
  namedBeds,
  ofAlga,
  standingBed,
} from './cultivated-beds.ts'
import { ammonia, nitrate, phosphate, temperature } from './readings.ts'

/**
 * Stores of N and P between uptake and growth; growth is full from the critical store on and the store
 * fills beyond it. A bed in the dark stops growing at once and taking up within days.
 */
export const bedGrowth = process<CultivatedBed>({
  id: 'bed-growth',
  title: 'Growth of cultivated algae',
  says: 'Algae in a refugium or on a screen grow by light, warmth and the scarcer of their stores; their own shade slows a thick bed. In the dark they live on what they have.',
  source: 'droop-1968',
  each: namedBeds,
  reads: { ...standingBed, ...litBed, ammonia, nitrate, phosphate, temperature },
  parameters: {
    carbonContent: carbonOfAlga,
    fastest: fact(ofAlga('mumax'), 'd⁻¹'),
    saturation: fact(ofAlga('ik'), 'µmol photons m⁻² s⁻¹'),
    leastN: fact(ofAlga('n_min'), 'µmol g⁻¹'),
    enoughN: fact(ofAlga('n_crit'), 'µmol g⁻¹'),
    fedN: fact(ofAlga('n_max'), 'µmol g⁻¹'),
    leastP: fact(ofAlga('p_min'), 'µmol g⁻¹'),
    enoughP: fact(ofAlga('p_crit'), 'µmol g⁻¹'),
    fedP: fact(ofAlga('p_max'), 'µmol g⁻¹'),
    mostAmmonia: fact(ofAlga('vmax_nh4'), 'µmol g⁻¹ d⁻¹'),
    halfAmmonia: fact(ofAlga('ks_nh4'), 'µmol L⁻¹'),
    mostNitrate: fact(ofAlga('vmax_no3'), 'µmol g⁻¹ d⁻¹'),
    halfNitrate: fact(ofAlga('ks_no3'), 'µmol L⁻¹'),
    mostPhosphate: fact(ofAlga('vmax_po4'), 'µmol g⁻¹ d⁻¹'),
    halfPhosphate: fact(ofAlga('ks_po4'), 'µmol L⁻¹'),
    efficiency: fact('alg.bed.efficiency', '1'),
    respiration: fact('alg.resp', 'd⁻¹'),
    shade: fact('alg.self_shade', 'm² g⁻¹'),
    warming: fact('alg.q10', '1'),
    ammoniaFirst: fact('alg.nh4_first', 'µmol L⁻¹'),
    darkUptake: fact('alg.dark_uptake', 'd'),
    dormant: fact('alg.dormant', '1'),
    wakes: fact('alg.wakes', 'd⁻¹'),
    transferN: fact('coral.s_nh4', 'L m⁻² d⁻¹'),
    transferP: fact('coral.s_po4', 'L m⁻² d⁻¹'),
  },
  terms: {
    mass: { is: 'carbon / carbonContent', unit: 'g' },
    storeN: { is: 'part(nitrogen, mass)', unit: 'µmol g⁻¹' },
    storeP: { is: 'part(phosphorus, mass)', unit: 'µmol g⁻¹' },
    fed: { is: 'least(droop(storeN, leastN, enoughN), droop(storeP, leastP, enoughP))', unit: '1' },
    lit: {
      is: 'least(hours / halfDay * lightSaturation(selfShaded(light, shade * mass / area), saturation), 1.4)',
      unit: '1',
    },
    warm: { is: 'q10(warming, temperature)', unit: '1' },
    // The tables tell net growth, so what is burnt is added to it; a thick bed burns what its top makes.
    full: { is: 'efficiency * fastest + respiration', unit: 'd⁻¹' },
    // Light on the bed relative to what it needs to hold its own.
    enoughLight: { is: 'lit * full / respiration', unit: '1' },
    awake: { is: 'positive(1 - dark / darkUptake)', unit: '1' },
    thirstA: { is: 'mostAmmonia * mass * positive(1 - storeN / fedN) * awake', unit: 'µmol d⁻¹' },
    thirstN: { is: 'mostNitrate * mass * positive(1 - storeN / fedN) * awake', unit: 'µmol d⁻¹' },
    thirstP: { is: 'mostPhosphate * mass * positive(1 - storeP / fedP) * awake', unit: 'µmol d⁻¹' },
    supplyN: { is: 'transferN * area', unit: 'L d⁻¹' },
  },
  transfers: [
    move({
      atom: 'C',
      from: outside.inorganicCarbon,
      to: ({ id }) => bedOfAlgae(id),
      rate: 'full * warm * lit * fed * carbon',
    }),
    move({
      atom: 'C',
      from: ({ id }) => bedOfAlgae(id),
      to: outside.inorganicCarbon,
      // What is long in the dark burns little.
      rate: 'respiration * (1 - (1 - dormant) * monod(dark, darkUptake)) * warm * carbon',
    }),
    move({
      atom: 'N',
      from: water.ammonia,
      to: ({ id }) => bedOfAlgae(id),
      rate: 'thirstA * monod(ammonia, halfAmmonia + thirstA / supplyN)',
    }),
    move({
      atom: 'N',
      from: water.nitrate,
      to: ({ id }) => bedOfAlgae(id),
      rate: 'thirstN * monod(nitrate, halfNitrate + thirstN / supplyN) * inhibited(ammonia, ammoniaFirst)',
    }),
    move({
      atom: 'P',
      from: water.phosphate,
      to: ({ id }) => bedOfAlgae(id),
      rate: 'thirstP * monod(phosphate, halfPhosphate + thirstP / (transferP * area))',
    }),
    change({
      state: ({ id }) => darkDays(id),
      rate: 'positive(1 - enoughLight) - wakes * dark * least(enoughLight, 1)',
    }),
  ],
})
