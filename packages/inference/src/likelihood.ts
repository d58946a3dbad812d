import type { Day, Observation } from '@holdfast/ecosystem'
import { ln } from '@holdfast/elementary'
import type { FactsOfSystem } from '@holdfast/facts'
import { logLikelihood, readingError } from './kit.ts'
import type { Seen } from './quantities-seen.ts'
import type { Target } from './smoother.ts'

/** A reading, and what in the model answers it. */
export interface Answerable {
  readonly reading: Observation
  readonly seen: Seen
}

/** The readings that a model can answer. */
export const answerable = (readings: readonly Observation[], seen: readonly Seen[]): readonly Answerable[] =>
  readings.flatMap((reading) => {
    const what = seen.find(
      (each) =>
        each.quantity === reading.quantity &&
        (each.quantity !== 'cover' || (each.surface === reading.surface && each.algae === reading.algae)),
    )
    return what ? [{ reading, seen: what }] : []
  })

/** What a member says to the readings, and how likely they are under it. */
export function heldAgainst(
  readings: readonly Answerable[],
  facts: FactsOfSystem,
  parameters: Float64Array,
  statesOn: (day: Day) => Float64Array,
): { readonly predicted: Float64Array; readonly logLikelihood: number } {
  const expected = readings.map(({ reading, seen }) => seen.of(statesOn(reading.day), parameters))
  return {
    predicted: Float64Array.from(expected, (value, i) => scaled(readings[i].reading, value, facts)),
    logLikelihood: readings.reduce(
      (sum, { reading }, i) => sum + logLikelihood(reading, expected[i], facts),
      0,
    ),
  }
}

/** The readings on the smoother's scale. */
export const targetsOf = (readings: readonly Answerable[], facts: FactsOfSystem): readonly Target[] =>
  readings.map(({ reading }) => ({
    value: scaled(reading, reading.value, facts),
    error: readingError(reading, facts) / (reading.value + bend(reading, facts)),
    below: reading.belowDetection,
  }))

/**
 * Logarithms, with a third of the reading added: members far above are drawn in as far as they are off,
 * and those near nothing do not run away.
 */
const scaled = (reading: Observation, value: number, facts: FactsOfSystem): number =>
  ln(value + bend(reading, facts))
const bend = (reading: Observation, facts: FactsOfSystem): number =>
  Math.max(reading.value / 3, readingError(reading, facts))
