import { exp } from '@holdfast/elementary'
import { demand } from '../out-of-range.ts'
import { log10AragoniteKspMucci1983, log10CalciteKspMucci1983 } from './calcium-carbonate-ksp-mucci-1983.ts'
import { calcium } from './conservative-totals.ts'

/**
 * Saturation of aragonite, [Ca][CO3] / Ksp: above 1 it can precipitate, below it dissolves.
 *
 * @param carbonate_umol_kg CO3 per kg of solution, 0 or more
 * @param salinity          practical (PSS-78), 5 to 44
 * @param temperature       °C (ITS-90), 5 to 40
 * @param calcium_umol_kg   as measured; by salinity where it is not given
 * @returns no dimension; 10 to 12 % either way with a keeper's pH and alkalinity
 * @throws OutOfRange outside these; nothing is clipped
 * @source Mucci 1983; calcium by salinity of Riley & Tongudai 1967
 * @check aragonite_saturation in validation/seawater/seawater-checks.csv (PyCO2SYS 1.8.3.4)
 */
export function aragoniteSaturation(
  carbonate_umol_kg: number,
  salinity: number,
  temperature: number,
  calcium_umol_kg = 1e6 * calcium(salinity),
): number {
  const product = exp(log10AragoniteKspMucci1983(salinity, temperature) * Math.LN10)
  return ionProduct(carbonate_umol_kg, calcium_umol_kg) / product
}

/** The same of calcite. @throws OutOfRange as above */
export function calciteSaturation(
  carbonate_umol_kg: number,
  salinity: number,
  temperature: number,
  calcium_umol_kg = 1e6 * calcium(salinity),
): number {
  const product = exp(log10CalciteKspMucci1983(salinity, temperature) * Math.LN10)
  return ionProduct(carbonate_umol_kg, calcium_umol_kg) / product
}

/** (mol/kg)² */
function ionProduct(carbonate_umol_kg: number, calcium_umol_kg: number): number {
  demand('carbonate', carbonate_umol_kg, { low: 0, high: Infinity, next: 'Give µmol/kg, 0 or more.' })
  demand('calcium', calcium_umol_kg, { low: 0, high: Infinity, next: 'Give µmol/kg, such as 10300.' })
  return carbonate_umol_kg * calcium_umol_kg * 1e-12
}
