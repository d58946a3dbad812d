import { surfaceKind } from '@holdfast/facts'
import { outside, standAccount, standCover, water } from '../accounts/index.ts'
import { amount, change, fact, move, process, setting } from '../declare/index.ts'
import { ammonia, nitrate, phosphate, temperature } from './readings.ts'
import {
  type Growing,
  hoursSetting,
  lightSetting,
  namedStands,
  ofKind,
  standFacts,
  standing,
  standTerms,
} from './stands.ts'

/**
 * Stores of N and P in the tissue, so that algae live on pulses and on recycled nutrients; uptake with
 * the water's way to the frond and the frond's own half-saturation as resistances in a row.
 */
export const algalGrowth = process<Growing>({
  id: 'algal-growth',
  title: 'Growth of algae on surfaces',
  says: 'Algae grow by light, warmth and the scarcer of their stores of nitrogen and phosphorus, spread over free surface and thicken until they shade themselves.',
  source: 'droop-1968',
  each: namedStands,
  reads: {
    ...standing,
    nitrogen: amount(({ stand }) => standAccount(stand), 'N'),
    phosphorus: amount(({ stand }) => standAccount(stand), 'P'),
    ammonia,
    nitrate,
    phosphate,
    temperature,
    light: setting(
      ({ stand }) => lightSetting(stand.surface),
      'µmol photons m⁻² s⁻¹',
      ({ surface }) => surface.light_umol_m2_s,
    ),
    hours: setting(
      ({ stand }) => hoursSetting(stand.surface),
      'h d⁻¹',
      ({ surface }) => surface.light_h_per_day,
    ),
    halfDay: setting('half a day', 'h d⁻¹', () => 12),
  },
  parameters: {
    ...standFacts,
    fastest: fact(ofKind('growth'), 'd⁻¹'),
    saturation: fact(ofKind('light_saturation'), 'µmol photons m⁻² s⁻¹'),
    halfN: fact(ofKind('half_saturation_N'), 'µmol L⁻¹'),
    halfP: fact(ofKind('half_saturation_P'), 'µmol L⁻¹'),
    leastN: fact(ofKind('quota_N_min'), 'µmol g⁻¹'),
    fedN: fact(ofKind('quota_N_max'), 'µmol g⁻¹'),
    leastP: fact(ofKind('quota_P_min'), 'µmol g⁻¹'),
    fedP: fact(ofKind('quota_P_max'), 'µmol g⁻¹'),
    uptakeOverNeed: fact('algae.uptake_over_need', '1'),
    ammoniaFirst: fact('alg.nh4_first', 'µmol L⁻¹'),
    shade: fact('alg.self_shade', 'm² g⁻¹'),
    warming: fact('alg.q10', '1'),
    respiration: fact('alg.resp', 'd⁻¹'),
    transferN: fact('coral.s_nh4', 'L m⁻² d⁻¹'),
    transferP: fact('coral.s_po4', 'L m⁻² d⁻¹'),
    renewal: fact(({ surface }) => surfaceKind(surface.kind).transferShare, '1'),
    patchLight: fact(({ stand }) => `patch.light.${stand.patch}`, '1'),
    settles: fact('algae.settling_rate', 'd⁻¹'),
  },
  terms: {
    ...standTerms,
    storeN: { is: 'part(nitrogen, mass)', unit: 'µmol g⁻¹' },
    storeP: { is: 'part(phosphorus, mass)', unit: 'µmol g⁻¹' },
    fed: { is: 'least(droop(storeN, leastN, fedN), droop(storeP, leastP, fedP))', unit: '1' },
    // Long days saturate: at most 1.4 times what twelve hours give.
    lit: {
      is: 'least(hours / halfDay * lightSaturation(selfShaded(light * patchLight, shade * mass / covered), saturation), 1.4)',
      unit: '1',
    },
    speed: { is: 'fastest * q10(warming, temperature) * lit * fed', unit: 'd⁻¹' },
    supplyN: { is: 'transferN * renewal * covered', unit: 'L d⁻¹' },
    supplyP: { is: 'transferP * renewal * covered', unit: 'L d⁻¹' },
    capacityN: {
      is: 'uptakeOverNeed * fastest * fedN * mass * positive(1 - storeN / fedN)',
      unit: 'µmol d⁻¹',
    },
    capacityP: {
      is: 'uptakeOverNeed * fastest * fedP * mass * positive(1 - storeP / fedP)',
      unit: 'µmol d⁻¹',
    },
    // The tables tell half-saturations of growth. A starved stand takes up more than it needs, so that of
    // its uptake is larger: by what makes steady growth at full light come out half at the tabled value.
    uptakeHalfN: { is: 'halfN * most(uptakeOverNeed * (fedN / leastN - 1) - 1, 1)', unit: 'µmol L⁻¹' },
    uptakeHalfP: { is: 'halfP * most(uptakeOverNeed * (fedP / leastP - 1) - 1, 1)', unit: 'µmol L⁻¹' },
    gripN: { is: 'uptakeHalfN + capacityN / supplyN', unit: 'µmol L⁻¹' },
    gripP: { is: 'uptakeHalfP + capacityP / supplyP', unit: 'µmol L⁻¹' },
  },
  transfers: [
    move({
      atom: 'C',
      from: outside.inorganicCarbon,
      to: ({ stand }) => standAccount(stand),
      rate: 'speed * positive(1 - thickness) * carbon',
    }),
    move({
      atom: 'C',
      from: ({ stand }) => standAccount(stand),
      to: outside.inorganicCarbon,
      rate: 'respiration * positive(1 - lit) * carbon',
    }),
    move({
      atom: 'N',
      from: water.ammonia,
      to: ({ stand }) => standAccount(stand),
      rate: 'capacityN * monod(ammonia, gripN)',
    }),
    move({
      atom: 'N',
      from: water.nitrate,
      to: ({ stand }) => standAccount(stand),
      rate: 'capacityN * monod(nitrate, gripN) * inhibited(ammonia, ammoniaFirst)',
    }),
    move({
      atom: 'P',
      from: water.phosphate,
      to: ({ stand }) => standAccount(stand),
      rate: 'capacityP * monod(phosphate, gripP)',
    }),
    // A thin stand thickens before it spreads; propagules settle on what is bare.
    change({
      state: ({ stand }) => standCover(stand),
      rate: '(speed * least(thickness, 1) * cover + settles * lit) * positive(1 - cover)',
    }),
  ],
})
