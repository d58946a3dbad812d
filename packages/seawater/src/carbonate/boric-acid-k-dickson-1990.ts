import { ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * ln of the dissociation constant of boric acid, total scale, mol per kg of solution.
 *
 * @param salinity    practical (PSS-78), 5 to 45
 * @param temperature °C (ITS-90), 0 to 45
 * @throws OutOfRange outside these; nothing is clipped
 * @source Dickson 1990, Deep-Sea Res. 37:755-766, as in Dickson, Sabine & Christian 2007, chapter 5
 * @check ln_KB in validation/seawater/seawater-checks.csv (guide of 2007)
 * @example lnBoricAcidKDickson1990(35, 25) // -19.7964
 */
export function lnBoricAcidKDickson1990(salinity: number, temperature: number): number {
  demandSalinity(salinity, 5, 45)
  demandTemperature(temperature, 0, 45)
  const s = salinity
  const q = Math.sqrt(s)
  const t = temperature + 273.15
  return (
    (-8966.9 - 2890.53 * q - 77.942 * s + 1.728 * s * q - 0.0996 * s * s) / t +
    148.0248 +
    137.1942 * q +
    1.62142 * s -
    (24.4344 + 25.085 * q + 0.2474 * s) * ln(t) +
    0.053105 * q * t
  )
}
