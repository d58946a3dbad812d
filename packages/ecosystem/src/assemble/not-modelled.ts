import type { FactsOfSystem } from '@holdfast/facts'
import { coralsLeftOut } from '../processes/coral-uptake.ts'
import { bedsLeftOut } from '../processes/cultivated-beds.ts'
import { feedsTakenForOthers } from '../processes/feeding.ts'
import type { System } from '../system.ts'

/** Only grazers have a lifespan; other animals live as long as the log does not say otherwise. */
const deaths = 'death of animals that are no grazers'

/** Names what the system has and no process covers yet, so that the ledger can say so. */
export function notModelled(system: System, { grazer }: FactsOfSystem): readonly string[] {
  const named = [
    ...bedsLeftOut(system),
    coralsLeftOut(system),
    ...feedsTakenForOthers(system),
    system.animals.some(({ taxon }) => taxon === undefined || !grazer(taxon)) ? deaths : undefined,
  ]
  return [...new Set(named.filter((name) => name !== undefined))]
}
