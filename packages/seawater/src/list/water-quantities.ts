import { ammoniaAndPHQuantities } from './ammonia-and-ph-quantities.ts'
import { carbonateQuantities } from './carbonate-quantities.ts'
import { constantQuantities } from './constant-quantities.ts'
import { mixingQuantities } from './mixing-quantities.ts'
import { physicalQuantities } from './physical-quantities.ts'
import { salinityQuantities } from './salinity-quantities.ts'
import type { WaterQuantity } from './water-quantity.ts'

/**
 * Every quantity of sea water that can be asked for by name: the one list that the check values, the
 * terminal and the docs go by. Units and names of inputs: water-inputs.ts.
 */
export const waterQuantities: readonly WaterQuantity[] = [
  ...salinityQuantities,
  ...physicalQuantities,
  ...ammoniaAndPHQuantities,
  ...constantQuantities,
  ...carbonateQuantities,
  ...mixingQuantities,
]

/** The quantity of that id, or undefined if we know none. */
export function waterQuantityNamed(id: string): WaterQuantity | undefined {
  return waterQuantities.find((quantity) => quantity.id === id)
}
