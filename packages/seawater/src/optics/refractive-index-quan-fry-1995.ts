import { demandSalinity, demandTemperature } from '../demands.ts'
import { demand, OutOfRange } from '../out-of-range.ts'

/** The yellow light of sodium that refractometers are made for, nm. */
export const sodiumLight_nm = 589.3

/**
 * Refractive index of sea water against air.
 *
 * @param salinity      practical (PSS-78), 0 to 42; the fit ends at 35 and is taken a little further here,
 *   where it is a straight line in salinity
 * @param temperature   °C (ITS-90), 0 to 30
 * @param wavelength_nm of the light, 400 to 700
 * @returns no dimension; true to 1.5e-5, which is 0.08 in salinity
 * @throws OutOfRange outside these; nothing is clipped
 * @source Quan & Fry 1995, Appl. Opt. 34:3477-3480, eq. 3 (number from memory)
 * @check refractive_index in validation/seawater/seawater-checks.csv
 * @example refractiveIndexQuanFry1995(35, 20) // 1.33941
 */
export function refractiveIndexQuanFry1995(
  salinity: number,
  temperature: number,
  wavelength_nm = sodiumLight_nm,
): number {
  demandSalinity(salinity, 0, 42)
  demandTemperature(temperature, 0, 30)
  demand('wavelength', wavelength_nm, { low: 400, high: 700, next: 'Give nm, such as 589.3.' })
  return fresh(temperature, wavelength_nm) + salinity * perSalinity(temperature, wavelength_nm)
}

/**
 * Practical salinity from a refractometer without temperature compensation whose scale is in salinity and
 * true at `trueAt`; one with compensation has this in it already.
 *
 * @param reading     of the scale, practical salinity, 0 to 42
 * @param temperature of sample and prism, °C (ITS-90), 0 to 30
 * @param trueAt      °C (ITS-90) at which the scale is true, 0 to 30
 * @param wavelength_nm of the light, 400 to 700
 * @returns practical salinity, 0 to 42: the water that has at `temperature` the index of the reading
 * @throws OutOfRange outside these; nothing is clipped
 * @source root of Quan & Fry 1995
 * @check salinity_from_refractometer in validation/seawater/seawater-checks.csv
 * @example salinityFromRefractometer(35, 25, 20) // 38.0
 */
export function salinityFromRefractometer(
  reading: number,
  temperature: number,
  trueAt: number,
  wavelength_nm = sodiumLight_nm,
): number {
  demandTemperature(temperature, 0, 30)
  const seen = refractiveIndexQuanFry1995(reading, trueAt, wavelength_nm)
  const salinity = (seen - fresh(temperature, wavelength_nm)) / perSalinity(temperature, wavelength_nm)
  if (salinity >= 0 && salinity <= 42) return salinity
  throw new OutOfRange({
    code: 'out-of-range',
    where: 'salinity',
    got: salinity,
    accepted: '0 to 42',
    next: 'Check the reading, the two temperatures, and that the instrument has no compensation of its own.',
  })
}

function fresh(t: number, l: number): number {
  return 1.31405 - 2.02e-6 * t * t + (15.868 - 0.00423 * t) / l - 4382 / (l * l) + 1.1455e6 / (l * l * l)
}

function perSalinity(t: number, l: number): number {
  return 1.779e-4 - 1.05e-6 * t + 1.6e-8 * t * t + 0.01155 / l
}
