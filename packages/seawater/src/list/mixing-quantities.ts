import { densityEos80 } from '../density/density-eos80.ts'
import { concentrationAfterChanges, concentrationAfterContinuousExchange } from '../mixing/dilution.ts'
import { ionByMassMillero2008, ionByVolumeMillero2008 } from '../mixing/ions-millero-2008.ts'
import { replacementVolume } from '../mixing/replacement.ts'
import {
  afterEvaporation,
  mixed,
  salinityOf,
  saltyWater,
  topOffVolume,
} from '../mixing/salinity-by-evaporation.ts'
import { freshWaterForVolume, saltMassForVolume, saltToRaise } from '../mixing/salt-mass.ts'
import { convertUnits, needsDensity } from './convert-units.ts'
import { form, type WaterQuantity } from './water-quantity.ts'

/** Units, ions, masses of salt, and waters put together. */
export const mixingQuantities: readonly WaterQuantity[] = [
  {
    id: 'convert_units',
    says: 'a value in another unit',
    unit: ({ to }) => to,
    forms: [
      form(['value', 'from', 'to'], ({ value, from, to }) =>
        needsDensity(from, to) ? { needs: ['S', 't'] } : convertUnits(value, from, to),
      ),
      form(['value', 'from', 'to', 'S', 't'], ({ value, from, to, S, t }) =>
        convertUnits(value, from, to, densityEos80(S, t)),
      ),
    ],
    restsOn: [convertUnits],
  },
  {
    id: 'ion_concentration',
    says: 'an ion in sea water of reference composition',
    unit: ({ per }) => `mg/${per}`,
    forms: [
      form(['S', 'ion', 'per'], ({ S, ion, per }) =>
        per === 'L' ? { needs: ['t'] } : ionByMassMillero2008(ion, S),
      ),
      form(['S', 't', 'ion', 'per'], ({ S, t, ion, per }) =>
        per === 'L' ? ionByVolumeMillero2008(ion, S, t) : ionByMassMillero2008(ion, S),
      ),
    ],
    restsOn: [ionByMassMillero2008, ionByVolumeMillero2008],
  },
  {
    id: 'salt_mass_for_volume',
    says: 'dry mix for a volume of finished water',
    unit: 'g',
    forms: [
      form(['S', 't', 'volume_L', 'salt_fraction'], ({ S, t, volume_L, salt_fraction }) =>
        saltMassForVolume(volume_L, S, t, salt_fraction),
      ),
    ],
    restsOn: [saltMassForVolume],
  },
  {
    id: 'fresh_water_for_volume',
    says: 'fresh water in a volume of finished water',
    unit: 'L',
    forms: [form(['S', 't', 'volume_L'], ({ S, t, volume_L }) => freshWaterForVolume(volume_L, S, t))],
    restsOn: [freshWaterForVolume],
  },
  {
    id: 'mix_two_waters',
    says: 'practical salinity of two waters together',
    unit: '1',
    forms: [
      form(['S1', 'volume1_L', 'S2', 'volume2_L', 't'], ({ S1, volume1_L, S2, volume2_L, t }) =>
        salinityOf(mixed(saltyWater(volume1_L, S1, t), saltyWater(volume2_L, S2, t))),
      ),
    ],
    restsOn: [saltyWater, mixed, salinityOf],
  },
  {
    id: 'salinity_after_evaporation',
    says: 'practical salinity when fresh water has gone as vapour',
    unit: '1',
    forms: [
      form(['S', 't', 'volume_L', 'evaporated_L'], ({ S, t, volume_L, evaporated_L }) =>
        salinityOf(afterEvaporation(saltyWater(volume_L, S, t), evaporated_L, t)),
      ),
    ],
    restsOn: [afterEvaporation],
  },
  {
    id: 'top_off_volume',
    says: 'fresh water that brings salinity down to a target',
    unit: 'L',
    forms: [
      form(['S', 'S_target', 't', 'volume_L'], ({ S, S_target, t, volume_L }) =>
        topOffVolume(saltyWater(volume_L, S, t), S_target, t),
      ),
    ],
    restsOn: [topOffVolume],
  },
  {
    id: 'salt_to_raise',
    says: 'dry mix that brings salinity up to a target',
    unit: 'g',
    forms: [
      form(['S', 'S_target', 't', 'volume_L', 'salt_fraction'], (given) =>
        saltToRaise(given.volume_L, given.S, given.S_target, given.t, given.salt_fraction),
      ),
    ],
    restsOn: [saltToRaise],
  },
  {
    id: 'replace_volume_for_salinity',
    says: 'water to replace so that the mix has the salinity wanted',
    unit: 'L',
    forms: [
      form(['S', 'S_target', 'S_new', 't', 'volume_L'], ({ S, S_target, S_new, t, volume_L }) =>
        replacementVolume({ volume_L, salinity: S, newWater: S_new, target: S_target, temperature: t }),
      ),
    ],
    restsOn: [replacementVolume],
  },
  {
    id: 'concentration_after_changes',
    says: 'concentration after equal water changes',
    unit: 'same as value',
    forms: [
      form(['value', 'value_new', 'fraction', 'count'], ({ value, value_new, fraction, count }) =>
        concentrationAfterChanges(value, value_new, fraction, count),
      ),
    ],
    restsOn: [concentrationAfterChanges],
  },
  {
    id: 'concentration_after_continuous_exchange',
    says: 'concentration after new water ran through',
    unit: 'same as value',
    forms: [
      form(['value', 'value_new', 'exchanged_volumes'], ({ value, value_new, exchanged_volumes }) =>
        concentrationAfterContinuousExchange(value, value_new, exchanged_volumes),
      ),
    ],
    restsOn: [concentrationAfterContinuousExchange],
  },
]
