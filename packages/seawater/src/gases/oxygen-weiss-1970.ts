import { exp, ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'
import { ipts68 } from '../salinity/temperature-scale.ts'

/**
 * Oxygen that sea water holds in balance with moist air at one atmosphere, the older form: within 0.3 % of
 * Garcia & Gordon 1992.
 *
 * @param salinity    practical (PSS-78), 0 to 40
 * @param temperature °C (ITS-90), -2 to 40
 * @returns mL of gas (0 °C, 1 atm) per litre of water; 1 mL is 44.66 µmol
 * @throws OutOfRange outside these; nothing is clipped
 * @source Weiss 1970, Deep-Sea Res. 17:721-735, eq. 4 (number from memory)
 * @check oxygen_solubility_weiss1970 in validation/seawater/seawater-checks.csv
 * @example oxygenSolubilityWeiss1970(35, 25) // 4.73
 */
export function oxygenSolubilityWeiss1970(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 40)
  demandTemperature(temperature, -2, 40)
  const hundreds = (ipts68(temperature) + 273.15) / 100
  return exp(
    -173.4292 +
      249.6339 / hundreds +
      143.3483 * ln(hundreds) -
      21.8492 * hundreds +
      salinity * (-0.033096 + hundreds * (0.014259 - 0.0017 * hundreds)),
  )
}
