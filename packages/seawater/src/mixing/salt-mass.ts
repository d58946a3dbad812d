/** Salt to weigh. Source of all of them: mass balance of salt and water, EOS-80 densities. */
import { demandVolume } from '../demands.ts'
import { densityEos80 } from '../density/density-eos80.ts'
import { demand } from '../out-of-range.ts'
import { absoluteSalinityMillero2008 } from '../salinity/absolute-salinity-millero-2008.ts'

/**
 * Dry mix for a volume of finished sea water. S 35 is not 35 g put into a litre.
 *
 * @param volume_L     finished water at `temperature`
 * @param salinity     practical (PSS-78), 0 to 42
 * @param temperature  °C (ITS-90), -2 to 40
 * @param saltFraction g of sea salt in 1 g of mix as weighed, above 0 to 1: 0.85 to 0.97 for usual mixes, which
 *   hold water of crystals (common practice); calibrate on the first batch
 * @returns g
 * @throws OutOfRange outside these; nothing is clipped
 * @check salt_mass_for_volume in validation/seawater/seawater-checks.csv
 * @example saltMassForVolume(100, 35, 25, 1) // 3598.6
 */
export function saltMassForVolume(
  volume_L: number,
  salinity: number,
  temperature: number,
  saltFraction: number,
): number {
  demandVolume(volume_L)
  demandSaltFraction(saltFraction)
  const mass_kg = densityEos80(salinity, temperature) * volume_L
  return (absoluteSalinityMillero2008(salinity) * mass_kg) / saltFraction
}

/**
 * Fresh water that goes into it, with salt free of water.
 *
 * @returns L at `temperature`
 * @throws OutOfRange as above; nothing is clipped
 * @check fresh_water_for_volume in validation/seawater/seawater-checks.csv
 * @example freshWaterForVolume(100, 35, 25) // 99.03
 */
export function freshWaterForVolume(volume_L: number, salinity: number, temperature: number): number {
  demandVolume(volume_L)
  const mass_kg = densityEos80(salinity, temperature) * volume_L
  return (mass_kg * (1 - absoluteSalinityMillero2008(salinity) / 1000)) / densityEos80(0, temperature)
}

/**
 * Dry mix that raises the salinity of water in place.
 *
 * @param volume_L water before, at `temperature`
 * @param salinity practical (PSS-78), 0 to 42
 * @param target   practical, from `salinity` to 42
 * @param temperature  °C (ITS-90), -2 to 40
 * @param saltFraction as above
 * @returns g
 * @throws OutOfRange outside these; nothing is clipped
 * @check salt_to_raise in validation/seawater/seawater-checks.csv
 * @example saltToRaise(200, 33, 35, 25, 1) // 425.6
 */
export function saltToRaise(
  volume_L: number,
  salinity: number,
  target: number,
  temperature: number,
  saltFraction: number,
): number {
  demandVolume(volume_L)
  demandSaltFraction(saltFraction)
  const mass_kg = densityEos80(salinity, temperature) * volume_L
  demand('target salinity', target, { low: salinity, high: 42, next: 'Salt only raises salinity.' })
  const wanted = absoluteSalinityMillero2008(target)
  const rise = wanted - absoluteSalinityMillero2008(salinity)
  return (1000 * mass_kg * rise) / (1000 - wanted) / saltFraction
}

function demandSaltFraction(saltFraction: number): void {
  demand('salt fraction', saltFraction, {
    low: 0,
    high: 1,
    aboveLow: true,
    next: 'Give g of salt in 1 g of mix, such as 0.9; 1 for salt free of water.',
  })
}
