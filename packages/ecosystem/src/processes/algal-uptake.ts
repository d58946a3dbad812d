import { water } from '../accounts/index.ts'
import { amount, fact, gathered, move, process } from '../declare/index.ts'
import { ammonia, nitrate, phosphate } from './readings.ts'
import { type Growing, namedStands, ofKind, stores, storesKey } from './stands.ts'

/**
 * Stores of N and P in the tissue, so that algae live on pulses and on recycled nutrients; uptake with the water's
 * way to the fronds and the fronds' own half-saturation as resistances in a row.
 */
export const algalUptake = process<Growing>({
  id: 'algal-uptake',
  title: 'Uptake by algae',
  says: 'The stands of a kind in a vessel drink the same water, and fill one store of nitrogen and one of phosphorus.',
  source: 'droop-1968',
  each: (system) => {
    const one = new Map(namedStands(system).map(({ of }) => [storesKey(of), of]))
    return [...one.values()].map((of) => ({ name: `${of.stand.kind} in ${of.surface.vessel}`, of }))
  },
  reads: {
    nitrogen: amount(stores, 'N'),
    phosphorus: amount(stores, 'P'),
    tissue: gathered('tissue', storesKey, 'µmol'),
    washed: gathered('washed', storesKey, 'm²'),
    ammonia,
    nitrate,
    phosphate,
  },
  parameters: {
    uptakeOverNeed: fact('algae.uptake_over_need', '1'),
    carbonContent: fact(ofKind('tissue_C'), 'µmol g⁻¹'),
    fastest: fact(ofKind('growth'), 'd⁻¹'),
    halfN: fact(ofKind('half_saturation_N'), 'µmol L⁻¹'),
    halfP: fact(ofKind('half_saturation_P'), 'µmol L⁻¹'),
    leastN: fact(ofKind('quota_N_min'), 'µmol g⁻¹'),
    fedN: fact(ofKind('quota_N_max'), 'µmol g⁻¹'),
    leastP: fact(ofKind('quota_P_min'), 'µmol g⁻¹'),
    fedP: fact(ofKind('quota_P_max'), 'µmol g⁻¹'),
    ammoniaFirst: fact('alg.nh4_first', 'µmol L⁻¹'),
    transferN: fact('coral.s_nh4', 'L m⁻² d⁻¹'),
    transferP: fact('coral.s_po4', 'L m⁻² d⁻¹'),
  },
  terms: {
    mass: { is: 'tissue / carbonContent', unit: 'g' },
    // What a full store would hold, less what it holds.
    wantedN: { is: 'positive(fedN * mass - nitrogen)', unit: 'µmol' },
    wantedP: { is: 'positive(fedP * mass - phosphorus)', unit: 'µmol' },
    capacityN: { is: 'uptakeOverNeed * fastest * wantedN', unit: 'µmol d⁻¹' },
    capacityP: { is: 'uptakeOverNeed * fastest * wantedP', unit: 'µmol d⁻¹' },
    // The tables tell half-saturations of growth. A starved stand takes up more than it needs, so that of
    // its uptake is larger: by what makes steady growth at full light come out half at the tabled value, and
    // a third more, since in plenty the store stands a little under full.
    uptakeHalfN: {
      is: 'halfN * most(1.33 * (uptakeOverNeed * (fedN / leastN - 1) - 1), 1)',
      unit: 'µmol L⁻¹',
    },
    uptakeHalfP: {
      is: 'halfP * most(1.33 * (uptakeOverNeed * (fedP / leastP - 1) - 1), 1)',
      unit: 'µmol L⁻¹',
    },
    gripN: { is: 'uptakeHalfN + part(capacityN, transferN * washed)', unit: 'µmol L⁻¹' },
    gripP: { is: 'uptakeHalfP + part(capacityP, transferP * washed)', unit: 'µmol L⁻¹' },
  },
  transfers: [
    move({ atom: 'N', from: water.ammonia, to: stores, rate: 'capacityN * monod(ammonia, gripN)' }),
    move({
      atom: 'N',
      from: water.nitrate,
      to: stores,
      rate: 'capacityN * monod(nitrate, gripN) * inhibited(ammonia, ammoniaFirst)',
    }),
    move({ atom: 'P', from: water.phosphate, to: stores, rate: 'capacityP * monod(phosphate, gripP)' }),
  ],
})
