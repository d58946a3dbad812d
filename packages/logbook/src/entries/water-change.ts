import { asTyped, kind, positive } from './kind.ts'
import { z } from './schema.ts'

export const waterChange = kind({
  name: 'water-change',
  title: 'Water change',
  v: 1,
  body: {
    volume_L: positive,
    /** The new water, where it is not the system's usual one. */
    water: z.exactOptional(z.object({ NO3_mg_L: z.number().min(0), PO4_mg_L: z.number().min(0) })),
    text: asTyped,
  },
})
