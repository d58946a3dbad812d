import { feed } from './feed.ts'
import type { Lever } from './lever.ts'
import { media } from './media.ts'
import { waterChange } from './water-change.ts'

/** The levers in the order in which they stand. */
export const levers: readonly Lever[] = [feed, waterChange, media]
