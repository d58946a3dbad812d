import { ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * pK of ammonium in sea water on the total scale, mol per kg of solution.
 *
 * @param salinity     practical (PSS-78), 0 to 40
 * @param temperature  °C (ITS-90), -2 to 40
 * @returns pK; the authors give the constant as good to 5 %, 0.02 in pK
 * @throws OutOfRange outside these; nothing is clipped
 * @source Clegg & Whitfield 1995, Geochim. Cosmochim. Acta 59:2403-2421, eq. 18, with 1 - 0.001005 S kg of
 *   water in a kg of solution
 * @check pK_ammonium in validation/seawater/seawater-checks.csv (PyCO2SYS 1.8.3.4)
 * @example ammoniumPkCleggWhitfield1995(35, 25) // 9.2458
 */
export function ammoniumPkCleggWhitfield1995(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 40)
  demandTemperature(temperature, -2, 40)
  const s = salinity
  const t = temperature + 273.15
  const rootT = Math.sqrt(t)
  const rootS = Math.sqrt(s)
  const perKgOfWater =
    pureWaterAmmoniumPkCleggWhitfield1995(temperature) +
    (0.04203362 - 11.24742 / t) * Math.sqrt(rootS) +
    (-13.6416 + 1.176949 * rootT - 0.02860785 * t + 545.4834 / t) * rootS +
    (-0.1462507 + 0.0090226468 * rootT - 0.0001471361 * t + 10.5425 / t) * s * rootS +
    (0.004669309 - 0.0001691742 * rootT - 0.5677934 / t) * s * s +
    (-2.354039e-5 + 0.009698623 / t) * s * s * rootS
  // Tables per kg of water (5.56 % at S 35, 25 °C, pH 8) read higher than these by this factor alone.
  return perKgOfWater - ln(1 - 0.001005 * s) / Math.LN10
}

/** The same in pure water: the first two terms of the equation. */
export function pureWaterAmmoniumPkCleggWhitfield1995(temperature: number): number {
  return 9.244605 - 2729.33 * (1 / 298.15 - 1 / (temperature + 273.15))
}
