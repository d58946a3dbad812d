import type { Day, Observation } from '@holdfast/ecosystem'
import { logLikelihood } from './kit.ts'
import type { Seen } from './quantities-seen.ts'

/** Sum over the readings that the model can answer. */
export function likelihoodOf(
  readings: readonly Observation[],
  seen: readonly Seen[],
  statesOn: (day: Day) => Float64Array | undefined,
): number {
  return readings.reduce((sum, reading) => {
    const states = statesOn(reading.day)
    const what = seen.find((each) => answers(each, reading))
    return states && what ? sum + logLikelihood(reading, what.of(states)) : sum
  }, 0)
}

const answers = (seen: Seen, reading: Observation): boolean =>
  seen.quantity === reading.quantity &&
  (seen.quantity !== 'cover' || (seen.surface === reading.surface && seen.algae === reading.algae))
