import type { System } from '../system.ts'
import { ordinarySystem } from './ordinary.ts'

/** An ordinary system with the kinds of algae that are in every reef, and its fish alone. */
export function ordinaryReef(number: number): System {
  const system = ordinarySystem(number)
  return {
    ...system,
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
