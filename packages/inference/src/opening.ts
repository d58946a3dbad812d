import type { Day, Observation, Opening } from '@holdfast/ecosystem'
import { exp } from '@holdfast/elementary'
import { coralBands, type FactsOfSystem } from '@holdfast/facts'
import { kitError } from './kit.ts'
import type { Scores } from './members.ts'
import type { OutlookQuestion } from './outlook-types.ts'

/** The readings nearest to a day, as this member takes them: within what their kits may be off by. */
export function openingOn(
  question: OutlookQuestion,
  day: Day,
  scores: Scores,
  facts: FactsOfSystem,
): Opening {
  const near = (quantity: Observation['quantity']): Observation | undefined =>
    question.observations
      .filter((reading) => reading.quantity === quantity && reading.day <= question.asOf)
      .reduce<Observation | undefined>(
        (best, reading) => (!best || Math.abs(reading.day - day) < Math.abs(best.day - day) ? reading : best),
        undefined,
      )
  const taken = (quantity: 'nitrate' | 'phosphate'): number => {
    const reading = near(quantity)
    const draw = scores.get(`opening ${quantity}`) ?? 0
    if (!reading) return unread(quantity, facts) * exp(draw)
    const error = kitError(quantity, reading.value, facts)
    // Nothing was read: anything up to the limit (or the kit's error, for a zero), the middle in the median.
    if (reading.belowDetection || reading.value <= error)
      return (Math.max(reading.value, error) / 2) * exp(0.5 * draw)
    return reading.value * exp((draw * error) / reading.value)
  }
  const ammonia = early(near('ammonia'), day)
  const nitrite = early(near('nitrite'), day)
  return {
    nitrate_mg_L: taken('nitrate'),
    phosphate_mg_L: taken('phosphate'),
    ...(ammonia === undefined ? {} : { ammonia_mg_N_L: ammonia }),
    ...(nitrite === undefined ? {} : { nitrite_mg_L: nitrite }),
  }
}

/** Ammonia and nitrite come and go in days: a reading of another day says nothing. */
const early = (reading: Observation | undefined, day: Day): number | undefined =>
  reading && !reading.belowDetection && Math.abs(reading.day - day) < 2 ? reading.value : undefined

/** Water that nobody has read is taken to be in the middle of what reefs are kept in, within a factor of five or so. */
function unread(quantity: 'nitrate' | 'phosphate', facts: FactsOfSystem): number {
  const [usual] = coralBands()
  const { low, high } = facts.fact(usual[quantity])
  return Math.sqrt(low * high)
}
