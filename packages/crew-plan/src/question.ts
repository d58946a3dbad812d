import type { Day, Model, Moment, World } from '@holdfast/ecosystem'

/** The system as it stands today, in one or several ways that it may be. */
export interface Present {
  readonly model: Model
  readonly day: Day
  readonly worlds: readonly World[]
  /** Of each world, together 1. */
  readonly weights: readonly number[]
  /** Husbandry from today on, unchanged, until a day. */
  readonly routine: (to: Day) => readonly Moment[]
  /** What was read of late, where it was: ammonia as mg N/L, nitrite as mg NO2/L. */
  readonly read?: { readonly ammonia?: number; readonly nitrite?: number }
}

/** What the keeper wants of a plan; what is not told is as most would have it. */
export interface Wishes {
  /** Vessel the crew is for; without it the one with the largest surfaces. */
  readonly vessel?: string
  /** Grazing beyond what grows, as a share of growth. */
  readonly margin?: number
  /** Animals that are safe with caution only: all of them, or these taxa; without it none. */
  readonly withCaution?: 'all' | readonly string[]
  /** Taxa and groups that are never to come. */
  readonly never?: readonly string[]
  /** Taxa and groups, of which alone the plan is made. */
  readonly only?: readonly string[]
  /** Taxa and groups, of each of which at least one is to live there. */
  readonly liked?: readonly string[]
  /** Taxa and groups that live there and are not to be given away; 'all' for whoever is there. */
  readonly keep?: 'all' | readonly string[]
  readonly budget_usd?: number
  /** Most that may be left to the hand, g of dry algae a week. */
  readonly byHandMost_g_week?: number
  /** Most animals of one taxon. */
  readonly mostOfOne?: number
}

export interface CrewQuestion {
  readonly present: Present
  readonly wishes: Wishes
}
