import { coralsLeftOut } from '../processes/coral-uptake.ts'
import { bedsLeftOut } from '../processes/cultivated-beds.ts'
import type { System } from '../system.ts'

const growthAndDeath = 'growth and death of animals'

/** Names what the system has and no process covers yet, so that the ledger can say so. */
export function notModelled(system: System): readonly string[] {
  const named = [
    ...bedsLeftOut(system),
    coralsLeftOut(system),
    system.animals.length > 0 ? growthAndDeath : undefined,
  ]
  return [...new Set(named.filter((name) => name !== undefined))]
}
