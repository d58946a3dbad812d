import { asTyped, kind, positive } from './kind.ts'
import { z } from './schema.ts'

/** Animals that came or went; `mass_g` is of one animal. */
export const animals = kind({
  name: 'animals',
  title: 'Animals added or lost',
  v: 1,
  body: {
    change: z.enum(['added', 'lost']),
    taxon: z.string().min(1),
    count: z.int().positive(),
    mass_g: z.exactOptional(positive),
    text: asTyped,
  },
})
