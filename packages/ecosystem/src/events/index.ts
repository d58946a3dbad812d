import type { Process } from '../declare/index.ts'
import { animalsArrive } from './animals-arrive.ts'
import { animalsLeave } from './animals-leave.ts'
import { carbonSwap } from './carbon-swap.ts'
import { crewArrives, crewLeaves } from './crew-changes.ts'
import { deadMatterArrives } from './dead-matter-arrives.ts'
import { dose } from './dose.ts'
import { exchangeableArrives } from './exchangeable-arrives.ts'
import { filterEmptied } from './filter-emptied.ts'
import { handRemoval } from './hand-removal.ts'
import { harvest } from './harvest.ts'
import { mediaSwap } from './media-swap.ts'
import { nitrifiersArrive } from './nitrifiers-arrive.ts'
import { siphoning } from './siphoning.ts'
import { waterChange } from './water-change.ts'

/** Transfers at an instant: declared like processes, with amounts in place of rates. */
export const events: readonly Process[] = [
  waterChange,
  mediaSwap,
  handRemoval,
  harvest,
  dose,
  animalsArrive,
  animalsLeave,
  crewArrives,
  crewLeaves,
  carbonSwap,
  filterEmptied,
  siphoning,
  deadMatterArrives,
  exchangeableArrives,
  nitrifiersArrive,
]
