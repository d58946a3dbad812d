import { pow } from '@holdfast/elementary'
import { fact } from '@holdfast/facts'
import type { Surface, System } from '../system.ts'
import { chance } from './chance.ts'
import { ordinarySystem } from './ordinary.ts'

/** Of the planar area of a pile of rock, what the lamp sees. */
const lit = 0.6

/**
 * An ordinary system with the surfaces that its rock and its glass show, the kinds of algae that are in every
 * reef, and its fish alone. Corals stand on a part of the lit rock and spread to twice that; what they leave
 * is the free lit rock.
 */
export function ordinaryReef(number: number): System {
  const system = ordinarySystem(number)
  const draw = chance(number * 32452843 + 11)
  const [{ volume_L }] = system.vessels
  const [{ mass_kg }] = system.rock
  // A box 2.3 times as long as it is wide and high: its floor, and its back and sides.
  const floor_m2 = 2.3 * pow(volume_L / 2300, 2 / 3)
  const walls_m2 = (4.3 / 2.3) * floor_m2
  const rock_m2 = mass_kg * fact('rock.area').typical
  const corals_m2 = lit * rock_m2 * (0.2 + 0.6 * draw())
  const areas: Readonly<Record<string, number>> = {
    rock_face: lit * rock_m2 - corals_m2 / 2,
    rock_underside: (1 - lit) * rock_m2,
    glass: walls_m2,
    sand: floor_m2,
  }
  return {
    ...system,
    surfaces: system.surfaces.map(
      (surface): Surface => ({ ...surface, area_m2: areas[surface.id] ?? surface.area_m2 }),
    ),
    sand: { mass_kg: floor_m2 * 14 * 3, depth_cm: 3 },
    corals: { kind: 'mixed', area_m2: corals_m2 },
    animals: system.animals.filter(({ role }) => role === 'fish'),
    algae: [
      { kind: 'hair_green', surface: 'rock_face', cover: 0.05 },
      { kind: 'turf', surface: 'rock_face', cover: 0.1 },
      { kind: 'film_green', surface: 'rock_face', cover: 0.2 },
      { kind: 'film_green', surface: 'glass', cover: 0.2 },
      { kind: 'coralline', surface: 'rock_face', cover: 0.2 },
    ],
  }
}
