import type { Day, Event } from '../log.ts'
import type { System } from '../system.ts'

/** A setting that takes a new value, or an event that happens with settings filled just for it. */
export type Moment =
  | { readonly day: Day; readonly set: Readonly<Record<string, number>> }
  | { readonly day: Day; readonly happens: string; readonly with: Readonly<Record<string, number>> }

/** Levers on what is done from a day on. */
export interface Change {
  readonly from: Day
  readonly waterChange?: { readonly volume_L: number; readonly every_days: number }
  readonly feedFactor?: number
  readonly foamFactor?: number
}

export interface TimelineQuestion {
  readonly system: System
  readonly events: readonly Event[]
  readonly from: Day
  readonly to: Day
  /** Today: up to it the log says which water changes were made, after it the routine. */
  readonly asOf: Day
  readonly change?: Change
}
