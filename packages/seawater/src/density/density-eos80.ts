import { demandSalinity, demandTemperature } from '../demands.ts'
import { ipts68 } from '../salinity/temperature-scale.ts'

/**
 * Density of sea water at one atmosphere.
 *
 * @param salinity     practical (PSS-78), 0 to 42
 * @param temperature  °C (ITS-90), -2 to 40
 * @returns kg L⁻¹; standard error of the equation 3.6e-6 kg L⁻¹
 * @throws OutOfRange outside these; nothing is clipped
 * @source EOS-80: Millero & Poisson 1981, Deep-Sea Res. 28A:625-629
 * @check density_eos80 in validation/seawater/seawater-checks.csv (UNESCO 1981 and 1983)
 * @example densityEos80(35, 25) // 1.02334
 */
export function densityEos80(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 42)
  demandTemperature(temperature, -2, 40)
  const t = ipts68(temperature)
  const s = salinity
  // The last coefficient ends in ...332 in UNESCO 1981 and 1983; some abstracts print ...336.
  const fresh =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))))
  const linear = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)))
  const root = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6)
  return (fresh + s * linear + s * Math.sqrt(s) * root + s * s * 4.8314e-4) / 1000
}
