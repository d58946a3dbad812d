import type { Day } from '@holdfast/ecosystem'

export type Nutrient = 'ammonia' | 'nitrite' | 'nitrate'
export type Dissolved = Nutrient | 'phosphate'

/** mg/L as N of total ammonia, as NO2, as NO3, as PO4. */
export type WaterUnit = 'mg/L N' | 'mg/L NO2' | 'mg/L NO3' | 'mg/L PO4'

/** 5 %, middle and 95 % of what is not known. */
export interface Band {
  readonly low: number
  readonly middle: number
  readonly high: number
}

/** What stood and may come in the water if nothing is done but what is done now, day after day. */
export interface Course {
  readonly quantity: Dissolved
  readonly unit: WaterUnit
  readonly days: readonly Day[]
  readonly bands: readonly Band[]
}

/** The highest that a quantity comes to. */
export interface Peak {
  readonly quantity: Nutrient
  readonly unit: WaterUnit
  readonly day: Band
  readonly height: Band
  /** The readings show it; else the model says when it is to be expected. */
  readonly by: 'readings' | 'model'
}

/**
 * What must be so before the first animals; the last two are for the keeper's eyes and do not decide.
 */
export type ConditionName =
  | 'ammonia_reads_nothing'
  | 'un_ionised_ammonia_low'
  | 'nitrite_near_nothing'
  | 'ammonia_challenge_cleared'
  | 'rock_cured'
  | 'nitrate_under_limit'
  | 'phosphate_under_limit'
  | 'salinity_and_temperature_steady'
  | 'film_showing'

/** A value that a condition is held against, from a fact of the catalogue or the keeper's own. */
export interface Limit {
  readonly value: number
  readonly unit: string
  readonly fact: string
}

/** What was read or is reckoned of a condition. */
export interface Shown {
  readonly value: number
  readonly unit: string
  readonly day: Day
  readonly by: 'reading' | 'model'
  /** True: `value` is the limit below which the kit read nothing. */
  readonly belowDetection?: boolean
}

export interface Condition {
  readonly name: ConditionName
  /** 'look': no reading tells it; the keeper looks. */
  readonly state: 'met' | 'open' | 'not read' | 'look'
  readonly limits: readonly Limit[]
  readonly shown?: Shown
}

/** Something to do, with how much of it. */
export type Deed =
  | { readonly name: 'spare animals' | 'first few' | 'look' }
  | { readonly name: 'test' | 'test often'; readonly quantities: readonly Dissolved[] }
  /** `rise`: mg/L N that `mass_g` of ammonium chloride adds to all the water. */
  | { readonly name: 'dose'; readonly mass_g: number; readonly rise: number }
  /** `share` of the water, 0 to 1. */
  | { readonly name: 'change' | 'change first'; readonly share: number }
  | { readonly name: 'cure'; readonly share: number; readonly media_g: number }

/** Something that would harm a start-up. */
export type Avoided = 'animals' | 'dose over animals' | 'light' | 'acid or bleach'

export interface Commissioning {
  readonly from: Day
  readonly asOf: Day
  readonly courses: readonly Course[]
  /** In the order of their days. */
  readonly peaks: readonly Peak[]
  readonly conditions: readonly Condition[]
  readonly readyNow: boolean
  /** Day from which the first animals may come; Infinity beyond what is looked ahead. */
  readonly ready: Band
  /** How far was looked ahead. */
  readonly until: Day
  /** Animals live in it already: they stand in for doses of ammonia, which would poison them. */
  readonly stocked: boolean
  /** What to do, in order. */
  readonly next: readonly Deed[]
  /** What to leave. */
  readonly not: readonly Avoided[]
}
