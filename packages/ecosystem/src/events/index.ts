import type { Process } from '../declare/index.ts'
import { animalsArrive } from './animals-arrive.ts'
import { dose } from './dose.ts'
import { handRemoval } from './hand-removal.ts'
import { harvest } from './harvest.ts'
import { mediaSwap } from './media-swap.ts'
import { waterChange } from './water-change.ts'

/** Transfers at an instant: declared like processes, with amounts in place of rates. */
export const events: readonly Process[] = [waterChange, mediaSwap, handRemoval, harvest, dose, animalsArrive]
