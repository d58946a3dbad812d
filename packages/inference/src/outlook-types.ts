import type { Day, Event, Observation, System } from '@holdfast/ecosystem'
import type { OwnFact } from '@holdfast/facts'

/** What is asked of the outlook. */
export interface OutlookQuestion {
  readonly system: System
  /** Facts of which the keeper has numbers of their own; of the others the catalogue's hold. */
  readonly ownFacts?: readonly OwnFact[]
  readonly observations: readonly Observation[]
  /** Everything that happened, and what is planned beyond the routine. */
  readonly events: readonly Event[]
  /** First day of the log. */
  readonly from: Day
  /** The day on which one looks: readings after it are not used. */
  readonly asOf: Day
  /** How far ahead, days. */
  readonly horizonDays: number
  readonly members: number
  readonly seed: number
  /** Levers moved from today on; the past stays as it was. */
  readonly levers?: Levers
}

/** A factor on what is done today; 1 is unchanged husbandry. */
export interface Levers {
  readonly waterChange?: { readonly volume_L: number; readonly every_days: number }
  readonly feedFactor?: number
  readonly foamFactor?: number
  /** Ferric media: this much goes in when the next filling is due, and then at intervals; 0 g is none any more. */
  readonly media?: { readonly mass_g: number; readonly every_days: number }
}

export interface Fan {
  readonly quantity: 'nitrate' | 'phosphate' | 'cover' | 'media load'
  readonly surface?: string
  readonly algae?: string
  /** mg/L as NO3, mg/L as PO4, share of the surface, or phosphorus on all of the media. */
  readonly unit: 'mg/L NO3' | 'mg/L PO4' | 'share' | 'mg P'
  readonly days: readonly Day[]
  /** Weighted quantiles of the members at each day. */
  readonly quantiles: {
    readonly p05: readonly number[]
    readonly p25: readonly number[]
    readonly p50: readonly number[]
    readonly p75: readonly number[]
    readonly p95: readonly number[]
  }
  /** Chance, 0 to 1, that the water is where the corals want it, at each day; only where there is such a band. */
  readonly inBand?: readonly number[]
}

export interface Outlook {
  readonly fans: readonly Fan[]
  readonly asOf: Day
  readonly members: number
  /** 1 / sum of squared weights. */
  readonly effectiveMembers: number
  /** Power to which the likelihood was taken so that enough members stay; 1 is all of it. */
  readonly tempering: number
  /** How many readings weighed the members. */
  readonly readingsUsed: number
  /** Sentences for people: what is not modelled yet, what could not be used. */
  readonly remarks: readonly string[]
  /** Hash of the inputs; an answer whose hash is not that of the question is old. */
  readonly inputsHash: string
}
