import type { Day, Observation } from '@holdfast/ecosystem'
import { ln } from '@holdfast/elementary'
import { kitError, logLikelihood, readingError } from './kit.ts'
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
  statesOn: (day: Day) => Float64Array,
): { readonly predicted: Float64Array; readonly logLikelihood: number } {
  const expected = readings.map(({ reading, seen }) => seen.of(statesOn(reading.day)))
  return {
    predicted: Float64Array.from(expected, (value, i) => scaled(readings[i].reading, value)),
    logLikelihood: readings.reduce((sum, { reading }, i) => sum + logLikelihood(reading, expected[i]), 0),
  }
}

/** The readings on the smoother's scale. */
export const targetsOf = (readings: readonly Answerable[]): readonly Target[] =>
  readings.map(({ reading }) => ({
    value: scaled(reading, reading.value),
    error: readingError(reading) / (reading.value + floorOf(reading)),
    below: reading.belowDetection,
  }))

/** Logarithms, with the kit's error at nothing added, so that zero is a place like others. */
const scaled = (reading: Observation, value: number): number => ln(value + floorOf(reading))
const floorOf = ({ quantity }: Observation): number =>
  quantity === 'cover' ? coverFloor : kitError(quantity, 0)
/** Covers below this are all "hardly any". */
const coverFloor = 0.02
