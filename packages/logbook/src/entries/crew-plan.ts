import { kind, name, notNegative } from './kind.ts'
import { z } from './schema.ts'

const counted = z.array(z.looseObject({ taxon: name, count: z.int().check(z.minimum(0)) }))

/**
 * A plan of a crew that the keeper has accepted: what is to come and go, and in which steps. It changes nothing in the
 * tank; who comes is logged when it comes.
 */
export const crewPlan = kind({
  name: 'crew-plan',
  title: 'Crew plan accepted',
  v: 1,
  body: {
    /** Model day of the present that it was made for. */
    asOf: z.number(),
    /** What the keeper wished, as asked. */
    wishes: z.record(z.string(), z.unknown()),
    leave: counted,
    steps: z.array(z.looseObject({ after_days: notNegative, animals: counted })),
    byHand: z.array(
      z.looseObject({ surface: name, patch: name, kind: name, grams_dry_per_week: notNegative }),
    ),
  },
  says: ({ steps, leave }) => {
    const told = (animals: z.output<typeof counted>): string =>
      animals.map(({ taxon, count }) => `${count} ${taxon}`).join(', ')
    const come = steps.flatMap(({ animals }) => animals)
    const parts = [
      ...(come.length > 0
        ? [`${told(come)} to come in ${steps.length === 1 ? 'one step' : `${steps.length} steps`}`]
        : []),
      ...(leave.length > 0 ? [`${told(leave)} to be given away`] : []),
    ]
    return `Crew plan accepted: ${parts.join('; ') || 'all stays as it is'}`
  },
})
