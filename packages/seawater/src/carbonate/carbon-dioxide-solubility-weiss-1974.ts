import { exp, ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * ln of the solubility of CO2, mol per kg of solution and atm of fugacity.
 *
 * @param salinity    practical (PSS-78), 0 to 45
 * @param temperature °C (ITS-90), -1 to 40
 * @throws OutOfRange outside these; nothing is clipped
 * @source Weiss 1974, Mar. Chem. 2:203-215, eq. 12 and table I (numbers from memory)
 * @check ln_K0 and K0 in validation/seawater/seawater-checks.csv (guide of 2007; table III of the paper)
 * @example lnCarbonDioxideSolubilityWeiss1974(35, 25) // -3.5617
 */
export function lnCarbonDioxideSolubilityWeiss1974(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 45)
  demandTemperature(temperature, -1, 40)
  const hundreds = (temperature + 273.15) / 100
  return (
    93.4517 / hundreds -
    60.2409 +
    23.3585 * ln(hundreds) +
    salinity * (0.023517 + hundreds * (-0.023656 + 0.0047036 * hundreds))
  )
}

/**
 * Fugacity of CO2 over its partial pressure in air at one atmosphere.
 *
 * @param temperature °C (ITS-90), -1 to 40
 * @returns no dimension; 0.997 at 25 °C
 * @throws OutOfRange outside; nothing is clipped
 * @source Weiss 1974, as above, eq. 9 and 11 (numbers from memory)
 * @check pCO2 in validation/seawater/seawater-checks.csv
 */
export function carbonDioxideFugacityShareWeiss1974(temperature: number): number {
  demandTemperature(temperature, -1, 40)
  const t = temperature + 273.15
  // cm³/mol: second virial coefficient of CO2, and that of CO2 with air.
  const alone = -1636.75 + t * (12.0408 + t * (-0.0327957 + t * 3.16528e-5))
  const withAir = 57.7 - 0.118 * t
  const bar = 1.01325
  return exp((bar * (alone + 2 * withAir)) / (83.1447 * t))
}
