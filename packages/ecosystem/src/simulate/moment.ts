import type { FactsOfSystem } from '@holdfast/facts'
import type { Day, Event } from '../log.ts'
import type { System } from '../system.ts'

/** Values of settings, by their ids. */
export type Values = Readonly<Record<string, number>>

/** Settings take new values, gain, or are multiplied; or an event happens, with settings filled just for it. */
export type Moment = { readonly day: Day } & (
  | { readonly set: Values }
  | { readonly add: Values }
  | { readonly multiply: Values }
  | { readonly happens: string; readonly with: Values }
)

/** Ids of the settings that a moment changes, or fills for what happens. */
export function changedBy(moment: Moment): readonly string[] {
  if ('happens' in moment) return Object.keys(moment.with)
  return Object.keys('set' in moment ? moment.set : 'add' in moment ? moment.add : moment.multiply)
}

/** A moment at which something happens to what the system holds. */
export type Happening = Extract<Moment, { readonly happens: string }>

/** Levers on what is done from a day on. */
export interface Change {
  readonly from: Day
  readonly waterChange?: { readonly volume_L: number; readonly every_days: number }
  readonly feedFactor?: number
  readonly foamFactor?: number
  /** Ferric media: this much goes in when the next filling is due, and then at intervals; 0 g is none any more. */
  readonly media?: { readonly mass_g: number; readonly every_days: number }
  /** Organic carbon dosed, relative to what is dosed now. */
  readonly carbonFactor?: number
}

export interface TimelineQuestion {
  readonly system: System
  /** What is usual where the system does not say; the catalogue alone where left out. */
  readonly facts?: FactsOfSystem
  readonly events: readonly Event[]
  readonly from: Day
  readonly to: Day
  /** Today: up to it the log says which water changes were made, after it the routine. */
  readonly asOf: Day
  readonly change?: Change
}
