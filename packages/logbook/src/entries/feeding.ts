import { asTyped, kind } from './kind.ts'
import { z } from './schema.ts'

/** From this day on so much is fed, as fed (frozen: thawed). */
export const feeding = kind({
  name: 'feeding',
  title: 'Change of feed',
  v: 1,
  body: { g_per_day: z.number().min(0), text: asTyped },
})
