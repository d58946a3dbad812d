import type { Equipment, System } from '../system.ts'

/** Equipment that moves nutrients and that no process covers yet, and the part that will. */
const parts: Readonly<Partial<Record<Equipment['kind'], string>>> = {
  'filter floss': 'mechanical filter',
  'filter sock': 'mechanical filter',
  'activated carbon': 'activated carbon',
  'organic carbon dosing': 'organic carbon dosing',
  refugium: 'refugium',
  'turf scrubber': 'turf scrubber',
  'ultraviolet lamp': 'ultraviolet lamp',
}

/** Kinds of rock whose release of buried organics matters and is not modelled yet. */
const releasing = new Set(['uncured live', 'dried ex-ocean'])

/** Names what the system has and no process covers yet, so that the ledger can say so. */
export function notModelled(system: System): readonly string[] {
  const named = [
    ...system.equipment.map(({ kind }) => parts[kind]),
    system.corals && system.corals.area_m2 > 0 ? 'coral uptake' : undefined,
    system.rock.length > 0 || system.sand ? 'denitrification in rock and sand' : undefined,
    system.rock.some(({ kind }) => releasing.has(kind)) ? 'leaching of rock' : undefined,
    system.animals.length > 0 ? 'growth and death of animals' : undefined,
  ]
  return [...new Set(named.filter((name) => name !== undefined))]
}
