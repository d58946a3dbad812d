import type { Observation } from '@holdfast/ecosystem'
import type { OutlookQuestion } from '@holdfast/inference'
import { dosesOf, halfDay } from './log.ts'

/** A reading within so many days of the filling says what the tank was filled with. */
const soon = 2
const hour = 1 / 24

/**
 * The question for the ensemble of a start-up: where nobody read the water that the tank was filled with, it is what
 * the salt water is said to hold, with no ammonia before the first dose. So the run begins with the start-up and not
 * with the first reading of nitrate or phosphate.
 */
export function startUpQuestion(question: OutlookQuestion): OutlookQuestion {
  const { from, events, system } = question
  const { salt_mix: salt, source_water: source } = system
  const observations = readAfterDoses(question)
  const dosed = events.find(({ kind, day }) => kind === 'dose' && day - from < soon)?.day
  const filled = [
    { quantity: 'nitrate', value: (salt.NO3_mg_L ?? 0) + (source.NO3_mg_L ?? 0), before: from + soon },
    { quantity: 'phosphate', value: (salt.PO4_mg_L ?? 0) + (source.PO4_mg_L ?? 0), before: from + soon },
    { quantity: 'ammonia', value: 0, before: dosed ?? Number.NEGATIVE_INFINITY },
  ] as const
  const unread = filled.filter(
    ({ quantity, before }) =>
      before >= from && !observations.some((one) => one.quantity === quantity && one.day < before),
  )
  const opening = unread.map(
    ({ quantity, value }): Observation => ({ day: from, quantity, value, belowDetection: false }),
  )
  return { ...question, observations: [...opening, ...observations] }
}

/** The readings with those of ammonia put after the dose of their day that they show, where no hours were told. */
export function readAfterDoses(question: OutlookQuestion): readonly Observation[] {
  const doses = dosesOf(question, question.asOf)
  return question.observations.map((one) => {
    if (one.quantity !== 'ammonia' || one.belowDetection) return one
    const shows = doses.find(
      ({ day, rise }) => one.day <= day && day - one.day < halfDay && one.value >= rise / 2,
    )
    return shows === undefined ? one : { ...one, day: shows.day + hour }
  })
}
