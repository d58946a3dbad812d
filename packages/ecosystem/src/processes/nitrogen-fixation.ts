import { algaeKind } from '@holdfast/facts'
import { outside } from '../accounts/index.ts'
import { fact, move, process, setting } from '../declare/index.ts'
import { ammonia, nitrate, temperature } from './readings.ts'
import {
  covering,
  type Growing,
  hoursSetting,
  lightSetting,
  namedStands,
  ofKind,
  standFacts,
  standing,
  stored,
  tissueOf,
} from './stands.ts'

/** Facts of fixation, by what the table says of a kind. */
const fixes = { many: 'n2.mat', 'in part': 'n2.turf' } as const

const factOf = ({ stand }: Growing): string => {
  const { fixesN2 } = algaeKind(stand.kind)
  return fixesN2 === 'no' ? fixes['in part'] : fixes[fixesN2]
}

export const nitrogenFixation = process<Growing>({
  id: 'nitrogen-fixation',
  title: 'Nitrogen fixation',
  says: 'Mats of cyanobacteria, and turf that holds some, take nitrogen gas where the water has hardly any nitrate or ammonium.',
  source: 'brocke-2018',
  slow: true,
  each: (system) => namedStands(system).filter(({ of }) => algaeKind(of.stand.kind).fixesN2 !== 'no'),
  reads: {
    area: standing.area,
    cover: covering.cover,
    nitrogen: stored.reads.nitrogen,
    tissue: stored.reads.tissue,
    ammonia,
    nitrate,
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
    carbonContent: standFacts.carbonContent,
    most: fact(factOf, 'µmol m⁻² d⁻¹'),
    halfEffect: fact('n2.din_half', 'µmol L⁻¹'),
    saturation: fact(ofKind('light_saturation'), 'µmol photons m⁻² s⁻¹'),
    fedN: fact(ofKind('quota_N_max'), 'µmol g⁻¹'),
    best: fact(ofKind('temperature_best'), '°C'),
    warming: fact('alg.q10', '1'),
    patchLight: fact(({ stand }) => `patch.light.${stand.patch}`, '1'),
  },
  terms: {
    richN: stored.terms.richN,
    lit: {
      is: 'least(hours / halfDay * lightSaturation(light * patchLight, saturation), 1.4)',
      unit: '1',
    },
    // A store that is full asks for no more.
    hungry: { is: 'positive(1 - richN * carbonContent / fedN)', unit: '1' },
  },
  transfers: [
    move({
      atom: 'N',
      from: outside.air,
      to: tissueOf.N.from,
      rate: 'most * area * cover * lit * warmth(warming, temperature, best) * hungry * inhibited(ammonia + nitrate, halfEffect)',
    }),
  ],
})
