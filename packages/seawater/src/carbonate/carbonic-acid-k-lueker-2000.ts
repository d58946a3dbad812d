import { ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * log10 of the first dissociation constant of carbonic acid, total scale, mol per kg of solution.
 *
 * @param salinity    practical (PSS-78), 19 to 43
 * @param temperature °C (ITS-90), 2 to 35
 * @returns log10 K1; true to 2 %
 * @throws OutOfRange outside these; nothing is clipped
 * @source Lueker et al. 2000, Mar. Chem. 70:105-119, after the measurements of Mehrbach et al. 1973
 * @check log10_K1 in validation/seawater/seawater-checks.csv (guide of 2007)
 * @example log10CarbonicAcidK1Lueker2000(35, 25) // -5.8472
 */
export function log10CarbonicAcidK1Lueker2000(salinity: number, temperature: number): number {
  const t = kelvin(salinity, temperature)
  return -3633.86 / t + 61.2172 - 9.6777 * ln(t) + salinity * (0.011555 - 0.0001152 * salinity)
}

/**
 * log10 of the second.
 *
 * @returns log10 K2; true to 4 %
 * @throws OutOfRange as above; nothing is clipped
 * @source as above
 * @check log10_K2 in validation/seawater/seawater-checks.csv (guide of 2007)
 * @example log10CarbonicAcidK2Lueker2000(35, 25) // -8.966
 */
export function log10CarbonicAcidK2Lueker2000(salinity: number, temperature: number): number {
  const t = kelvin(salinity, temperature)
  return -471.78 / t - 25.929 + 3.16967 * ln(t) + salinity * (0.01781 - 0.0001122 * salinity)
}

function kelvin(salinity: number, temperature: number): number {
  demandSalinity(salinity, 19, 43)
  demandTemperature(temperature, 2, 35)
  return temperature + 273.15
}
