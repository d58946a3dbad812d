import type { FactsOfSystem } from '@holdfast/facts'
import { water } from '../accounts/index.ts'
import { concentration, setting } from '../declare/index.ts'
import type { SurfaceKind, System } from '../system.ts'

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
export const porousArea = (system: System, facts: FactsOfSystem): number =>
  rockArea(system, facts) + sandArea(system, facts)

/** Planar area of rock, m²; where no face of it is described, what its mass usually shows. */
export function rockArea(system: System, facts: FactsOfSystem): number {
  const told = areaOf(system, 'rock_face', 'rock_underside')
  return told > 0 ? told : facts.typical('rock.area') * rockMass(system)
}

/** Planar area of the sand bed, m²; where it is not described, its mass over its depth. */
export function sandArea(system: System, facts: FactsOfSystem): number {
  const told = areaOf(system, 'sand')
  const { sand } = system
  if (told > 0 || !sand) return told
  return sand.mass_kg / (facts.typical('sand.bulk_density') * sand.depth_cm * 10)
}

export const rockMass = ({ rock }: System): number => rock.reduce((sum, { mass_kg }) => sum + mass_kg, 0)

const areaOf = (system: System, ...kinds: readonly SurfaceKind[]): number =>
  system.surfaces.filter(({ kind }) => kinds.includes(kind)).reduce((sum, { area_m2 }) => sum + area_m2, 0)

/** Planar area of all surfaces, m²; a system without any told has a square metre for 100 L. */
export function wettedArea(system: System): number {
  const told = system.surfaces.reduce((sum, surface) => sum + surface.area_m2, 0)
  return told > 0 ? told : volumeOf(system) / 100
}

export const hasRockOrSand = (system: System): boolean => system.rock.length > 0 || system.sand !== undefined
