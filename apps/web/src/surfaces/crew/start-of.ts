import type { Day } from '@holdfast/ecosystem'
import { modelDay } from '@holdfast/logbook'

/**
 * The day from which the steps of a plan count: the day that it was made for, or the day on which it is read where
 * the log ends before that, for nobody buys animals in the past.
 *
 * @param asOf  the last day of the log
 * @param on  ISO date on which the plan is read or was kept
 */
export const startOf = (asOf: Day, on: string, timeZone: string): Day =>
  Math.max(asOf, modelDay(on, 12, timeZone))
