import { exp, ln } from '@holdfast/elementary'
import { molarMass } from '@holdfast/quantities'
import { demandSalinity, demandTemperature } from '../demands.ts'
import { densityEos80 } from '../density/density-eos80.ts'
import { freezingCurveMillero1978 } from '../density/freezing-point-millero-1978.ts'
import { demand } from '../out-of-range.ts'
import { waterVapourWeissPrice1980 } from './water-vapour-weiss-price-1980.ts'

/**
 * Oxygen that sea water holds in balance with moist air.
 *
 * @param salinity     practical (PSS-78), 0 to 42
 * @param temperature  °C (ITS-90), from freezing to 40
 * @param pressure_atm of the moist air at the surface, 0.3 to 1.2 atm
 * @returns µmol kg⁻¹; true to 0.3 %
 * @throws OutOfRange outside these; nothing is clipped
 * @source Garcia & Gordon 1992, Limnol. Oceanogr. 37:1307-1312, eq. 8 with the coefficients fitted to Benson &
 *   Krause; other pressures by the vapour of Weiss & Price 1980
 * @check oxygen_saturation in validation/seawater/seawater-checks.csv; GSW O2sol_SP_pt in validation/gsw
 * @example oxygenSaturationGarciaGordon1992(35, 25) // 206.8
 */
export function oxygenSaturationGarciaGordon1992(
  salinity: number,
  temperature: number,
  pressure_atm = 1,
): number {
  demandSalinity(salinity, 0, 42)
  demandTemperature(temperature, freezingCurveMillero1978(salinity), 40)
  demand('pressure of the air', pressure_atm, {
    low: 0.3,
    high: 1.2,
    next: 'Give atm; 1 at sea level, about 0.89 at 1000 m.',
  })
  const s = salinity
  const t = ln((298.15 - temperature) / (273.15 + temperature))
  // The printed equation carries a stray A3 Ts² (from memory); it is left out, as everyone does.
  const fresh = 5.80871 + t * (3.20291 + t * (4.17887 + t * (5.10006 + t * (-9.86643e-2 + t * 3.80369))))
  const salty = -7.01577e-3 + t * (-7.70028e-3 + t * (-1.13864e-2 + t * -9.51519e-3))
  const vapour = waterVapourWeissPrice1980(salinity, temperature)
  return exp(fresh + s * (salty - 2.75915e-7 * s)) * ((pressure_atm - vapour) / (1 - vapour))
}

/**
 * The same by volume.
 *
 * @returns mg O2 per litre of sea water
 * @throws OutOfRange as above; nothing is clipped
 * @source as above, times the EOS-80 density
 * @check oxygen_saturation_mg_L in validation/seawater/seawater-checks.csv
 * @example oxygenSaturationByVolume(35, 25) // 6.77
 */
export function oxygenSaturationByVolume(salinity: number, temperature: number, pressure_atm = 1): number {
  const perKilogram = oxygenSaturationGarciaGordon1992(salinity, temperature, pressure_atm)
  return (perKilogram * densityEos80(salinity, temperature) * molarMass('O2')) / 1000
}
