import { count, kind, name } from './kind.ts'
import { z } from './schema.ts'

const numbers = z.array(z.number())

/**
 * An outlook as it was shown once: what later readings are held against. Immutable, so that no forecast
 * is made better afterwards; scores are reckoned from these alone.
 */
export const shownOutlook = kind({
  name: 'shown-outlook',
  title: 'Outlook as shown',
  v: 1,
  body: {
    /** Model day up to which readings were used. */
    asOf: z.number(),
    /** Receipt of the newest entry that it knew. */
    knownAt: z.iso.datetime(),
    members: count,
    seed: z.int(),
    /** Hash of the model that ran: declarations, forms and integrator. */
    model: name,
    /** Hash of all that went in. */
    inputs: name,
    settings: z.record(z.string(), z.unknown()),
    fans: z.array(
      z.looseObject({
        quantity: name,
        unit: name,
        surface: z.exactOptional(name),
        algae: z.exactOptional(name),
        days: numbers,
        /** A list by the name of each quantile, as long as `days`. */
        quantiles: z.record(z.string(), numbers),
      }),
    ),
  },
  says: ({ fans, members }) => {
    const quantities = [...new Set(fans.map(({ quantity }) => quantity))].join(', ')
    return `Outlook shown for ${quantities || 'nothing'}, of ${members} members`
  },
})
