import { exp, ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * Pressure of water vapour over sea water.
 *
 * @param salinity    practical (PSS-78), 0 to 42
 * @param temperature °C (ITS-90), -2 to 40
 * @returns atm
 * @throws OutOfRange outside these; nothing is clipped
 * @source Weiss & Price 1980, Mar. Chem. 8:347-359, eq. 10 (number from memory)
 * @check oxygen_saturation row SW066 of validation/seawater/seawater-checks.csv
 * @example waterVapourWeissPrice1980(35, 25) // 0.0307
 */
export function waterVapourWeissPrice1980(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 42)
  demandTemperature(temperature, -2, 40)
  const hundreds = (temperature + 273.15) / 100
  return exp(24.4543 - 67.4509 / hundreds - 4.8489 * ln(hundreds) - 0.000544 * salinity)
}
