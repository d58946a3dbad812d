/**
 * Salinity of a volume from which pure water evaporates and into which water is poured. What is kept is
 * the mass of water and the mass of salt, so that litres of different salinity add up rightly.
 * Source: mass balance; densities EOS-80 (Millero & Poisson 1981).
 */
import { densityEos80 } from '../density/density-eos80.ts'
import { demand, OutOfRange } from '../out-of-range.ts'

const litres = { low: 0, high: Infinity, next: 'Give litres, 0 or more.' }

/** A body of water by mass. */
export interface SaltyWater {
  readonly mass_kg: number
  /** Practical salinity times mass; it moves with the salt and with nothing else. */
  readonly salt: number
}

/** @throws OutOfRange for a volume below 0, or salinity or temperature outside EOS-80 */
export function saltyWater(volume_L: number, salinity: number, temperature: number): SaltyWater {
  demand('volume', volume_L, litres)
  const mass_kg = densityEos80(salinity, temperature) * volume_L
  return { mass_kg, salt: mass_kg * salinity }
}

/** Practical salinity. */
export function salinityOf(water: SaltyWater): number {
  return water.salt / water.mass_kg
}

/** L at `temperature`. @throws OutOfRange when the water is too salty for EOS-80 */
export function volumeOf(water: SaltyWater, temperature: number): number {
  return water.mass_kg / densityEos80(salinityOf(water), temperature)
}

/**
 * What is left when `evaporated_L` (liquid pure water at `temperature`) has gone as vapour.
 *
 * @throws OutOfRange when more would evaporate than there is
 */
export function afterEvaporation(water: SaltyWater, evaporated_L: number, temperature: number): SaltyWater {
  demand('evaporated', evaporated_L, litres)
  const mass_kg = water.mass_kg - densityEos80(0, temperature) * evaporated_L
  if (mass_kg > 0) return { mass_kg, salt: water.salt }
  throw new OutOfRange({
    code: 'out-of-range',
    where: 'evaporated',
    got: evaporated_L,
    accepted: `less than the ${water.mass_kg.toFixed(1)} kg that are there`,
    next: 'Check the litres a day and the days without top-off.',
  })
}

/** Both waters in one vessel. */
export function mixed(one: SaltyWater, other: SaltyWater): SaltyWater {
  return { mass_kg: one.mass_kg + other.mass_kg, salt: one.salt + other.salt }
}

/** What is left when a share of the water itself is taken out: salinity stays. @throws OutOfRange outside 0 to 1 */
export function afterTakingOut(water: SaltyWater, share: number): SaltyWater {
  demand('share taken out', share, { low: 0, high: 1, next: 'No more can be taken than is there.' })
  return { mass_kg: water.mass_kg * (1 - share), salt: water.salt * (1 - share) }
}

/**
 * Pure water that brings the water to `target` with nothing taken out.
 *
 * @returns L at `temperature`
 * @throws OutOfRange for a target above the salinity there is: pure water does not raise it
 */
export function topOffVolume(water: SaltyWater, target: number, temperature: number): number {
  demand('target salinity', target, {
    low: 0,
    high: salinityOf(water),
    aboveLow: true,
    next: 'Pure water only lowers salinity.',
  })
  return (water.salt / target - water.mass_kg) / densityEos80(0, temperature)
}
