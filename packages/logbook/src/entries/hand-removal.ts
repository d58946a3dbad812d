import { asTyped, kind, share } from './kind.ts'
import { z } from './schema.ts'

/** Algae plucked or scraped off; what is left to drift stays in the system. */
export const handRemoval = kind({
  name: 'hand-removal',
  title: 'Algae removed by hand',
  v: 1,
  body: {
    surface: z.string().min(1),
    algae: z.string().min(1),
    share,
    leftToDrift: z.boolean(),
    text: asTyped,
  },
})
