import { ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * ln of the ion product of water, total scale, (mol per kg of solution)².
 *
 * @param salinity    practical (PSS-78), 0 to 45
 * @param temperature °C (ITS-90), 0 to 45
 * @throws OutOfRange outside these; nothing is clipped
 * @source Millero 1995, Geochim. Cosmochim. Acta 59:661-677, moved from the seawater to the total scale by -0.015
 *   as in Dickson, Sabine & Christian 2007, chapter 5
 * @check ln_KW in validation/seawater/seawater-checks.csv (guide of 2007)
 * @example lnWaterKMillero1995(35, 25) // -30.434
 */
export function lnWaterKMillero1995(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 45)
  demandTemperature(temperature, 0, 45)
  const t = temperature + 273.15
  const lnT = ln(t)
  return (
    -13847.26 / t +
    148.9652 -
    23.6521 * lnT +
    (118.67 / t - 5.977 + 1.0495 * lnT) * Math.sqrt(salinity) -
    0.01615 * salinity
  )
}
