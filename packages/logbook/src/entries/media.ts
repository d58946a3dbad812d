import { asTyped, kind, positive } from './kind.ts'
import { z } from './schema.ts'

/** Phosphate media; `mass_g` is dry. Old media removed and new placed at once is 'replaced'. */
export const media = kind({
  name: 'media',
  title: 'Phosphate media',
  v: 1,
  body: {
    action: z.enum(['placed', 'removed', 'replaced']),
    mass_g: z.exactOptional(positive),
    text: asTyped,
  },
})
