import { whereRises } from '../bisection.ts'
import { demand } from '../out-of-range.ts'
import { densityEos80 } from './density-eos80.ts'

/**
 * Specific gravity of sea water: its density over that of fresh water at the reference temperature. Written
 * sample/reference, such as 25/25 °C; the same water reads up to 0.003 apart under two references.
 *
 * @param salinity             practical (PSS-78), 0 to 42
 * @param temperature          of the sample, °C (ITS-90), -2 to 40
 * @param referenceTemperature of the fresh water, °C (ITS-90), -2 to 40
 * @returns no dimension
 * @throws OutOfRange outside these; nothing is clipped
 * @source ratio of EOS-80 densities (Millero & Poisson 1981)
 * @check specific_gravity in validation/seawater/seawater-checks.csv
 * @example specificGravity(35, 25, 25) // 1.02637
 */
export function specificGravity(salinity: number, temperature: number, referenceTemperature: number): number {
  return densityEos80(salinity, temperature) / densityEos80(0, referenceTemperature)
}

/**
 * Practical salinity of water of a specific gravity; 0.001 is 1.3 in salinity.
 *
 * @param gravity              no dimension, such as 1.0264
 * @param temperature          of the sample, °C (ITS-90), -2 to 40
 * @param referenceTemperature of the fresh water, °C (ITS-90), -2 to 40; never assumed
 * @returns practical salinity, 0 to 42
 * @throws OutOfRange where no such water has that specific gravity
 * @source root of the above
 * @check salinity_from_specific_gravity in validation/seawater/seawater-checks.csv
 * @example salinityFromSpecificGravity(1.0264, 25, 25) // 35.04
 */
export function salinityFromSpecificGravity(
  gravity: number,
  temperature: number,
  referenceTemperature: number,
): number {
  return whereRises((salinity) => specificGravity(salinity, temperature, referenceTemperature), gravity, {
    where: 'specific gravity',
    low: 0,
    high: 42,
    next: 'Check the reading and the two temperatures that belong to it.',
  })
}

/** Cubic expansion of a float of soda-lime glass, 1/K: 2.3e-5 to 2.8e-5 in use; plastic 2e-4 or more. */
export const glassExpansionPerKelvin = 2.5e-5

/**
 * Practical salinity from a hydrometer whose scale is specific gravity, true in water of `trueAt` against
 * fresh water of `trueAt`. In other water the float itself has grown or shrunk.
 *
 * @param reading         of the scale, no dimension
 * @param temperature     of the water now, °C (ITS-90), -2 to 40
 * @param trueAt          °C (ITS-90) printed on the instrument, -2 to 40
 * @param expansionPerKelvin cubic expansion of the float, 1/K, 0 to 0.001
 * @returns practical salinity, 0 to 42; a good glass float is true to 0.3 to 0.7 (common practice)
 * @throws OutOfRange outside these; nothing is clipped
 * @source mass of the float = volume under water × density, at both temperatures; EOS-80 densities
 * @check salinity_from_hydrometer in validation/seawater/seawater-checks.csv
 * @example salinityFromHydrometer(1.025, 25, 15.6) // 35.5
 */
export function salinityFromHydrometer(
  reading: number,
  temperature: number,
  trueAt: number,
  expansionPerKelvin = glassExpansionPerKelvin,
): number {
  demand('expansion of the float', expansionPerKelvin, {
    low: 0,
    high: 1e-3,
    next: 'Give 1/K, such as 2.5e-5 for glass.',
  })
  const grown = 1 + expansionPerKelvin * (temperature - trueAt)
  return salinityFromSpecificGravity(reading / grown, temperature, trueAt)
}
