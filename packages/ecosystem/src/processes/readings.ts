import { water } from '../accounts/index.ts'
import { concentration, setting } from '../declare/index.ts'
import type { Surface, System } from '../system.ts'

/** Slot 0 of the settings: the water that all vessels share, L. */
export const waterVolume = 'water volume'

export const volumeOf = (system: System): number =>
  system.vessels.reduce((sum, vessel) => sum + vessel.volume_L, 0)

/** Readings that many formulas share; an instance carries its system. */
export interface InSystem {
  readonly system: System
}

export const temperature = setting<InSystem>('temperature', '°C', ({ system }) => system.temperature_C)
export const ammonia = concentration<unknown>(water.ammonia, 'N')
export const nitrate = concentration<unknown>(water.nitrate, 'N')
export const phosphate = concentration<unknown>(water.phosphate, 'P')

/** Planar area of rock and sand, over which the water gives to what lives in them. m² */
export const porousArea = (system: System): number =>
  system.surfaces.filter(isPorous).reduce((sum, surface) => sum + surface.area_m2, 0)

/** Planar area of all surfaces, m²; a system without any told has a square metre for 100 L. */
export function wettedArea(system: System): number {
  const told = system.surfaces.reduce((sum, surface) => sum + surface.area_m2, 0)
  return told > 0 ? told : volumeOf(system) / 100
}

const isPorous = ({ kind }: Surface): boolean =>
  kind === 'rock_face' || kind === 'rock_underside' || kind === 'sand'

export const hasRockOrSand = (system: System): boolean => system.rock.length > 0 || system.sand !== undefined
