import { ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * ln of the dissociation constant of HSO4⁻, free scale, mol per kg of solution.
 *
 * @param salinity    practical (PSS-78), 0 to 45; measured from 5, and towards fresh water its part goes to 0
 * @param temperature °C (ITS-90), 0 to 45
 * @throws OutOfRange outside these; nothing is clipped
 * @source Dickson 1990, J. Chem. Thermodyn. 22:113-127, as in Dickson, Sabine & Christian 2007, chapter 5
 * @check ln_KS in validation/seawater/seawater-checks.csv
 * @example lnBisulfateKDickson1990(35, 25) // -2.30
 */
export function lnBisulfateKDickson1990(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 45)
  demandTemperature(temperature, 0, 45)
  const t = temperature + 273.15
  const lnT = ln(t)
  const ionic = (19.924 * salinity) / (1000 - 1.005 * salinity)
  const rootIonic = Math.sqrt(ionic)
  return (
    -4276.1 / t +
    141.328 -
    23.093 * lnT +
    (-13856 / t + 324.57 - 47.986 * lnT) * rootIonic +
    (35474 / t - 771.54 + 114.723 * lnT) * ionic -
    (2698 / t) * ionic * rootIonic +
    (1776 / t) * ionic * ionic +
    ln(1 - 0.001005 * salinity)
  )
}
