import { outside, water } from '../accounts/index.ts'
import { amount, concentration, fact, move, process, split } from '../declare/index.ts'
import { carbonDosingOf } from './carbon-dosing.ts'
import { habitat } from './nitrifiers.ts'
import { crowding } from './oxidation.ts'
import { ammonia, type InSystem, nitrate, phosphate, temperature } from './readings.ts'

/**
 * Stores of N and P that stretch, so that cells go on for a while on little phosphate and then stop: then
 * more carbon does nothing. They hold ammonia and room in the films that nitrifiers want.
 */
export const bacterialGrowth = process<InSystem>({
  id: 'bacterial-growth',
  title: 'Bacteria on dosed carbon',
  says: 'Bacteria grow on dosed carbon as long as they find nitrogen and phosphorus; what leaves with the foam is out, what stays comes back.',
  source: 'fagerbakke-1996',
  each: (system) => (carbonDosingOf(system) ? [{ name: '', of: { system } }] : []),
  reads: {
    cells: amount(water.bacteria, 'C'),
    nitrogen: amount(water.bacteria, 'N'),
    phosphorus: amount(water.bacteria, 'P'),
    labile: concentration(water.labile, 'C'),
    labileC: amount(water.labile, 'C'),
    labileN: amount(water.labile, 'N'),
    labileP: amount(water.labile, 'P'),
    ammonia,
    nitrate,
    phosphate,
    temperature,
    rockMass: habitat.rockMass,
    sandMass: habitat.sandMass,
  },
  parameters: {
    fastest: fact('cd.mumax', 'd⁻¹'),
    yield: fact('cd.yield', '1'),
    seed: fact('cd.seed', 'd⁻¹'),
    halfCarbon: fact('cd.ks', 'µmol L⁻¹'),
    leastN: fact('cd.quota_N_least', '1'),
    fedN: fact('cd.quota_N_fed', '1'),
    leastP: fact('cd.quota_P_least', '1'),
    fedP: fact('cd.quota_P_fed', '1'),
    uptakeOverNeed: fact('cd.uptake_over_need', '1'),
    halfN: fact('cd.ks_n', 'µmol L⁻¹'),
    halfP: fact('cd.ks_p', 'µmol L⁻¹'),
    ammoniaFirst: fact('cd.ammonia_first', 'µmol L⁻¹'),
    warming: fact('min.q10', '1'),
    filmShare: fact('cd.film_share', '1'),
    filmHalf: fact('cd.film_half', 'µmol m⁻²'),
    rockArea: fact('nit.area.rock', 'm² kg⁻¹'),
    sandArea: fact('nit.area.sand', 'm² kg⁻¹'),
  },
  gathers: {
    [crowding]: {
      key: () => 'film',
      sum: 'filmShare * part(nitrogen, nitrogen + filmHalf * (rockMass * rockArea + sandMass * sandArea))',
      unit: '1',
    },
  },
  terms: {
    storeN: { is: 'part(nitrogen, cells)', unit: '1' },
    storeP: { is: 'part(phosphorus, cells)', unit: '1' },
    speed: { is: 'fastest * q10(warming, temperature)', unit: 'd⁻¹' },
    eaten: {
      is: 'speed / yield * cells * monod(labile, halfCarbon) * least(droop(storeN, leastN, fedN), droop(storeP, leastP, fedP))',
      unit: 'µmol d⁻¹',
    },
    // With a bite of dissolved organics comes the nitrogen and phosphorus in it.
    share: { is: 'part(eaten, labileC)', unit: 'd⁻¹' },
    capacityN: {
      is: 'uptakeOverNeed * speed * fedN * cells * positive(1 - storeN / fedN)',
      unit: 'µmol d⁻¹',
    },
    capacityP: {
      is: 'uptakeOverNeed * speed * fedP * cells * positive(1 - storeP / fedP)',
      unit: 'µmol d⁻¹',
    },
  },
  transfers: [
    split({
      atom: 'C',
      from: water.labile,
      rate: 'eaten',
      into: [
        { to: water.bacteria, share: 'yield' },
        { to: outside.inorganicCarbon, share: 'rest' },
      ],
    }),
    // Films shed cells, so that the last ones are never lost.
    move({ atom: 'C', from: water.labile, to: water.bacteria, rate: 'seed * labileC' }),
    move({ atom: 'N', from: water.labile, to: water.bacteria, rate: '(share + seed) * labileN' }),
    move({ atom: 'P', from: water.labile, to: water.bacteria, rate: '(share + seed) * labileP' }),
    move({ atom: 'N', from: water.ammonia, to: water.bacteria, rate: 'capacityN * monod(ammonia, halfN)' }),
    move({
      atom: 'N',
      from: water.nitrate,
      to: water.bacteria,
      rate: 'capacityN * monod(nitrate, halfN) * inhibited(ammonia, ammoniaFirst)',
    }),
    move({
      atom: 'P',
      from: water.phosphate,
      to: water.bacteria,
      rate: 'capacityP * monod(phosphate, halfP)',
    }),
    // Cells fuller than full give back what they cannot use.
    move({
      atom: 'N',
      from: water.bacteria,
      to: water.ammonia,
      rate: 'speed * positive(nitrogen - fedN * cells)',
    }),
    move({
      atom: 'P',
      from: water.bacteria,
      to: water.phosphate,
      rate: 'speed * positive(phosphorus - fedP * cells)',
    }),
  ],
})
