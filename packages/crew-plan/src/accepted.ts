import type { CrewAnswer } from './answer.ts'
import type { Wishes } from './question.ts'

type Plan = Pick<Extract<CrewAnswer, { readonly status: 'plan' | 'refused' }>, 'crew' | 'steps' | 'byHand'>

/**
 * A plan as the log keeps it once the keeper has accepted it: the body of an entry of the kind crew-plan.
 *
 * @param asOf  model day of the present that it was made for
 */
export const acceptedPlan = ({ crew, steps, byHand }: Plan, wishes: Wishes, asOf: number) => ({
  asOf,
  wishes: { ...wishes },
  leave: crew.flatMap(({ taxon, leave }) => (leave > 0 ? [{ taxon, count: leave }] : [])),
  steps: steps.map(({ after_days, animals }) => ({
    after_days,
    animals: animals.map((one) => ({ ...one })),
  })),
  byHand: byHand.map(({ surface, patch, kind, grams_dry_per_week }) => ({
    surface,
    patch,
    kind,
    grams_dry_per_week,
  })),
})
