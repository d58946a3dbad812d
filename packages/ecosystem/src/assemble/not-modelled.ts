import { coralsLeftOut } from '../processes/coral-uptake.ts'
import { bedsLeftOut } from '../processes/cultivated-beds.ts'
import type { Equipment, System } from '../system.ts'

/** Equipment that moves nutrients and that no process covers yet, and the part that will. */
const parts: Readonly<Partial<Record<Equipment['kind'], string>>> = {
  'filter floss': 'mechanical filter',
  'filter sock': 'mechanical filter',
  'activated carbon': 'activated carbon',
  'organic carbon dosing': 'organic carbon dosing',
  'ultraviolet lamp': 'ultraviolet lamp',
}

const growthAndDeath = 'growth and death of animals'

/** Kinds of rock whose release of buried organics matters and is not modelled yet. */
const releasing = new Set(['uncured live', 'dried ex-ocean'])

/** Dense dry rock and a thin layer of sand denitrify next to nothing. */
const dense = new Set(['quarried dry', 'man-made dry'])
const thin_cm = 2.5

const denitrifies = ({ rock, sand }: System): boolean =>
  rock.some(({ kind }) => !dense.has(kind)) || (sand !== undefined && sand.depth_cm >= thin_cm)

/** Is there anything not modelled yet that takes nitrogen or phosphorus out of the water? */
export const takesNutrients = (system: System): boolean =>
  notModelled(system).some((part) => part !== 'leaching of rock' && part !== growthAndDeath)

/** Names what the system has and no process covers yet, so that the ledger can say so. */
export function notModelled(system: System): readonly string[] {
  const named = [
    ...system.equipment.map(({ kind }) => parts[kind]),
    ...bedsLeftOut(system),
    coralsLeftOut(system),
    denitrifies(system) ? 'denitrification in rock and sand' : undefined,
    system.rock.some(({ kind }) => releasing.has(kind)) ? 'leaching of rock' : undefined,
    system.animals.length > 0 ? growthAndDeath : undefined,
  ]
  return [...new Set(named.filter((name) => name !== undefined))]
}
