import type { Day, Event, Observation, System } from '@holdfast/ecosystem'
import { molarMass } from '@holdfast/quantities'
import type { Dissolved } from './answer.ts'
import type { Limits } from './limits.ts'

/** What was written of a start-up. */
export interface Log {
  readonly system: System
  readonly from: Day
  readonly observations: readonly Observation[]
  readonly events: readonly Event[]
}

/** Noon to noon counts as whole days, whatever the hour at which one reads. */
export const halfDay = 0.5

/** Readings of a quantity up to a day, in order. */
export const readingsOf = (log: Log, quantity: Dissolved, day: Day): readonly Observation[] =>
  log.observations
    .filter((one) => one.quantity === quantity && one.day >= log.from && one.day <= day)
    .sort((a, b) => a.day - b.day)

export const waterOf = ({ vessels }: System): number =>
  vessels.reduce((sum, { volume_L }) => sum + volume_L, 0)

/** mg N in a gram of ammonium chloride. */
const nitrogenOfSalt = (1000 * molarMass('N')) / molarMass('NH4Cl')

/** Ammonium chloride, g, that adds so much ammonia (mg/L N) to so much water. */
export const saltFor = (rise: number, water_L: number): number => (rise * water_L) / nitrogenOfSalt

export interface Dose {
  readonly day: Day
  /** Rise of ammonia in all the water, mg/L N. */
  readonly rise: number
}

export const dosesOf = ({ system, events }: Log, day: Day): readonly Dose[] =>
  events.flatMap((event) =>
    event.kind === 'dose' && event.substance === 'ammonium chloride' && event.day <= day
      ? [{ day: event.day, rise: (event.mass_g * nitrogenOfSalt) / waterOf(system) }]
      : [],
  )

export const isNothing = ({ value, belowDetection }: Observation, { ammonia }: Limits): boolean =>
  belowDetection || value <= ammonia.value

/** Doses large enough to show what the bacteria can do, after which ammonia read nothing in time. */
export function challengesCleared(log: Log, limits: Limits, day: Day): readonly Dose[] {
  const readings = readingsOf(log, 'ammonia', day)
  // A dose that was weighed for the least that counts may fall short by a rounding of the scale.
  return dosesOf(log, day).filter(
    (dose) =>
      dose.rise >= 0.95 * limits.challenge.value &&
      readings.some(
        (one) =>
          one.day > dose.day &&
          one.day <= dose.day + limits.challengeDays.value + halfDay &&
          isNothing(one, limits),
      ),
  )
}

/** Day since which every reading of ammonia is nothing, but for those of a challenge that was cleared. */
export function quietSince(log: Log, limits: Limits, day: Day): Day | undefined {
  const cleared = challengesCleared(log, limits, day)
  const challenged = (one: Observation): boolean =>
    cleared.some((dose) => one.day >= dose.day && one.day <= dose.day + limits.challengeDays.value + halfDay)
  const readings = readingsOf(log, 'ammonia', day)
  const loud = readings.findLast((one) => !isNothing(one, limits) && !challenged(one))
  return readings.find((one) => isNothing(one, limits) && (loud === undefined || one.day > loud.day))?.day
}

/** Animals that live in the system on a day, as description and log have it. */
export const livingOn = ({ system, events }: Log, day: Day): number =>
  events.reduce(
    (count, event) =>
      event.day > day
        ? count
        : event.kind === 'animals added'
          ? count + event.count
          : event.kind === 'animals lost'
            ? count - event.count
            : count,
    system.animals.reduce((sum, { count }) => sum + count, 0),
  )

/** Rock that came with life worth sparing: no ammonia is dosed over it unless the start-up was dosed anyway. */
const withLife = new Set<string>(['cured live', 'uncured live'])

/** Whether a dose of ammonia is asked as proof: not over animals, nor over rock with life that was never dosed. */
export function challengeAsked(log: Log, day: Day): boolean {
  if (livingOn(log, day) > 0) return false
  const added = log.events.flatMap((event) =>
    event.kind === 'rock added' && event.day <= day ? [event.rock] : [],
  )
  const living = [...log.system.rock, ...added].some(({ kind, mass_kg }) => mass_kg > 0 && withLife.has(kind))
  return !living || dosesOf(log, day).length > 0
}
