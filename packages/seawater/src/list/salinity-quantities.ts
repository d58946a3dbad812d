import { salinityFromHydrometer, salinityFromSpecificGravity } from '../density/specific-gravity.ts'
import { salinityFromRefractometer } from '../optics/refractive-index-quan-fry-1995.ts'
import { absoluteSalinityMillero2008 } from '../salinity/absolute-salinity-millero-2008.ts'
import {
  conductivityAt25C,
  conductivityPss78,
  conductivityRatioPss78,
  practicalSalinityOfRatioPss78,
  practicalSalinityPss78,
} from '../salinity/practical-salinity-pss78.ts'
import { form, type WaterQuantity } from './water-quantity.ts'

/** Salinity, from what instruments read and to it. */
export const salinityQuantities: readonly WaterQuantity[] = [
  {
    id: 'practical_salinity',
    says: 'practical salinity from conductivity (PSS-78)',
    unit: '1',
    forms: [
      form(['C', 't', 'p'], ({ C, t, p }) => practicalSalinityPss78(C, t, p)),
      form(['R', 't', 'p'], ({ R, t, p }) => practicalSalinityOfRatioPss78(R, t, p)),
    ],
    restsOn: [practicalSalinityPss78, practicalSalinityOfRatioPss78],
  },
  {
    id: 'conductivity_ratio',
    says: 'conductivity over 42.914 mS/cm',
    unit: '1',
    forms: [form(['S', 't', 'p'], ({ S, t, p }) => conductivityRatioPss78(S, t, p))],
    restsOn: [conductivityRatioPss78],
  },
  {
    id: 'conductivity',
    says: 'conductivity of water of a salinity (PSS-78)',
    unit: 'mS/cm',
    forms: [form(['S', 't', 'p'], ({ S, t, p }) => conductivityPss78(S, t, p))],
    restsOn: [conductivityPss78],
  },
  {
    id: 'conductivity_at_25C',
    says: 'conductivity of the same water at 25 degC',
    unit: 'mS/cm',
    forms: [form(['C', 't', 'p'], ({ C, t, p }) => conductivityAt25C(C, t, p))],
    restsOn: [conductivityAt25C],
  },
  {
    id: 'absolute_salinity',
    says: 'absolute salinity of reference composition',
    unit: 'g/kg',
    forms: [form(['S'], ({ S }) => absoluteSalinityMillero2008(S))],
    restsOn: [absoluteSalinityMillero2008],
  },
  {
    id: 'salinity_from_specific_gravity',
    says: 'practical salinity from specific gravity',
    unit: '1',
    forms: [form(['SG', 't', 't_ref'], ({ SG, t, t_ref }) => salinityFromSpecificGravity(SG, t, t_ref))],
    restsOn: [salinityFromSpecificGravity],
  },
  {
    id: 'salinity_from_hydrometer',
    says: 'practical salinity from a hydrometer, its expansion taken off',
    unit: '1',
    forms: [
      form(['reading', 't', 't_cal', 'glass_expansion_per_K'], (given) =>
        salinityFromHydrometer(given.reading, given.t, given.t_cal, given.glass_expansion_per_K),
      ),
    ],
    restsOn: [salinityFromHydrometer],
  },
  {
    id: 'salinity_from_refractometer',
    says: 'practical salinity from a refractometer without temperature compensation',
    unit: '1',
    forms: [
      form(['reading', 't', 't_cal', 'wavelength_nm'], ({ reading, t, t_cal, wavelength_nm }) =>
        salinityFromRefractometer(reading, t, t_cal, wavelength_nm),
      ),
    ],
    restsOn: [salinityFromRefractometer],
  },
]
