import { densityEos80 } from '../density/density-eos80.ts'
import { densityTeos10 } from '../density/density-teos10.ts'
import { freezingPointMillero1978 } from '../density/freezing-point-millero-1978.ts'
import { specificGravity } from '../density/specific-gravity.ts'
import {
  oxygenSaturationByVolume,
  oxygenSaturationGarciaGordon1992,
} from '../gases/oxygen-garcia-gordon-1992.ts'
import { oxygenSolubilityWeiss1970 } from '../gases/oxygen-weiss-1970.ts'
import { refractiveIndexQuanFry1995 } from '../optics/refractive-index-quan-fry-1995.ts'
import { form, type WaterQuantity } from './water-quantity.ts'

/** Density, light and oxygen. */
export const physicalQuantities: readonly WaterQuantity[] = [
  {
    id: 'density_eos80',
    says: 'density (EOS-80)',
    unit: 'kg/m3',
    forms: [form(['S', 't'], ({ S, t }) => 1000 * densityEos80(S, t))],
    restsOn: [densityEos80],
  },
  {
    id: 'density_teos10',
    says: 'density (TEOS-10)',
    unit: 'kg/m3',
    forms: [form(['S', 't', 'p'], ({ S, t, p }) => 1000 * densityTeos10(S, t, p))],
    restsOn: [densityTeos10],
  },
  {
    id: 'freezing_point',
    says: 'freezing point',
    unit: 'degC',
    forms: [form(['S', 'p'], ({ S, p }) => freezingPointMillero1978(S, p))],
    restsOn: [freezingPointMillero1978],
  },
  {
    id: 'specific_gravity',
    says: 'specific gravity',
    unit: '1',
    forms: [form(['S', 't', 't_ref'], ({ S, t, t_ref }) => specificGravity(S, t, t_ref))],
    restsOn: [specificGravity],
  },
  {
    id: 'refractive_index',
    says: 'refractive index',
    unit: '1',
    forms: [
      form(['S', 't', 'wavelength_nm'], ({ S, t, wavelength_nm }) =>
        refractiveIndexQuanFry1995(S, t, wavelength_nm),
      ),
    ],
    restsOn: [refractiveIndexQuanFry1995],
  },
  {
    id: 'oxygen_saturation',
    says: 'oxygen in balance with air',
    unit: 'umol/kg',
    forms: [
      form(['S', 't', 'pressure_atm'], ({ S, t, pressure_atm }) =>
        oxygenSaturationGarciaGordon1992(S, t, pressure_atm),
      ),
    ],
    restsOn: [oxygenSaturationGarciaGordon1992],
  },
  {
    id: 'oxygen_saturation_mg_L',
    says: 'oxygen in balance with air, by volume',
    unit: 'mg/L',
    forms: [
      form(['S', 't', 'pressure_atm'], ({ S, t, pressure_atm }) =>
        oxygenSaturationByVolume(S, t, pressure_atm),
      ),
    ],
    restsOn: [oxygenSaturationByVolume],
  },
  {
    id: 'oxygen_solubility_weiss1970',
    says: 'oxygen in balance with air, older form',
    unit: 'mL/L',
    forms: [form(['S', 't'], ({ S, t }) => oxygenSolubilityWeiss1970(S, t))],
    restsOn: [oxygenSolubilityWeiss1970],
  },
]
