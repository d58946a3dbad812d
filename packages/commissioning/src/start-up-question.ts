import type { Observation } from '@holdfast/ecosystem'
import type { OutlookQuestion } from '@holdfast/inference'

/** A reading within so many days of the filling says what the tank was filled with. */
const soon = 2

/**
 * The question with the water that the tank was filled with, where nobody read it: what the salt water is said to
 * hold. So the run begins with the start-up and not with the first reading of nitrate or phosphate.
 */
export function startUpQuestion(question: OutlookQuestion): OutlookQuestion {
  const { from, observations, system } = question
  const { salt_mix: salt, source_water: source } = system
  const filled: readonly Observation[] = (
    [
      ['nitrate', (salt.NO3_mg_L ?? 0) + (source.NO3_mg_L ?? 0)],
      ['phosphate', (salt.PO4_mg_L ?? 0) + (source.PO4_mg_L ?? 0)],
    ] as const
  )
    .filter(([quantity]) => !observations.some((one) => one.quantity === quantity && one.day - from < soon))
    .map(([quantity, value]) => ({ day: from, quantity, value, belowDetection: false }))
  return { ...question, observations: [...filled, ...observations] }
}
