import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * ln of the dissociation constant of HF, total scale, mol per kg of solution.
 *
 * @param salinity    practical (PSS-78), 10 to 40
 * @param temperature °C (ITS-90), 9 to 33
 * @throws OutOfRange outside these; nothing is clipped
 * @source Perez & Fraga 1987, Mar. Chem. 21:161-168, as in Dickson, Sabine & Christian 2007, chapter 5
 * @check ln_KF in validation/seawater/seawater-checks.csv
 * @example lnFluorideKPerezFraga1987(35, 25) // -6.09
 */
export function lnFluorideKPerezFraga1987(salinity: number, temperature: number): number {
  demandSalinity(salinity, 10, 40)
  demandTemperature(temperature, 9, 33)
  return lnFluorideCurvePerezFraga1987(salinity, temperature)
}

/** The curve anywhere, for sums in which HF hardly counts. */
export function lnFluorideCurvePerezFraga1987(salinity: number, temperature: number): number {
  return 874 / (temperature + 273.15) - 9.68 + 0.111 * Math.sqrt(salinity)
}
