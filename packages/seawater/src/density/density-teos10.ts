import { demandPressure, demandTemperature } from '../demands.ts'
import {
  absoluteSalinityMillero2008,
  saltPerPracticalSalinity,
} from '../salinity/absolute-salinity-millero-2008.ts'
import { pureWater, salt } from './gibbs-coefficients-teos10.ts'

/**
 * Density of sea water of reference composition, from the Gibbs function itself.
 *
 * @param salinity     practical (PSS-78), 0 to 42; taken to absolute salinity by reference composition
 * @param temperature  °C (ITS-90), in place, -2 to 40
 * @param pressure     dbar above the atmosphere, 0 to 10000; 0 in a tank
 * @returns kg L⁻¹; within 6e-6 of EOS-80 at 10 to 32 °C and no pressure
 * @throws OutOfRange outside these; nothing is clipped
 * @source TEOS-10: IOC, SCOR & IAPSO 2010, Manuals and Guides 56, eq. 2.8.1 (number from memory), rho_t_exact;
 *   Gibbs function: IAPWS R13-08 and SR7-09
 * @check density_teos10 in validation/seawater/seawater-checks.csv; GSW rho_t_exact in validation/gsw
 * @example densityTeos10(35, 25) // 1.02334
 */
export function densityTeos10(salinity: number, temperature: number, pressure = 0): number {
  demandTemperature(temperature, -2, 40)
  demandPressure(pressure)
  const reduced = absoluteSalinityMillero2008(salinity) / (40 * saltPerPracticalSalinity)
  const x = powers(Math.sqrt(reduced), 6)
  const y = powers(temperature / 40, 8)
  const z = powers(pressure / 1e4, 7)
  let slope = 0
  for (const [j, k, g] of pureWater) slope += g * y[j] * k * z[k - 1]
  for (const [i, j, k, g] of salt) slope += g * x[i] * y[j] * k * z[k - 1]
  // slope is J/kg for 10⁴ dbar = 10⁸ Pa, so slope / 10⁸ is m³/kg and 10⁵ / slope kg/L.
  return 1e5 / slope
}

/** 1, base, base² and so on, `count` of them. */
function powers(base: number, count: number): readonly number[] {
  const all = [1]
  while (all.length < count) all.push(all[all.length - 1] * base)
  return all
}
