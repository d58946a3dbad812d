import type { Rock } from './system.ts'

/**
 * What a keeper's log says to the model. Days are days of 86,400 s from 1970-01-01T00:00Z, with a
 * fraction; the shell turns civil dates into days, so that the core knows no calendar.
 */
export type Day = number

export type ObservedQuantity = 'nitrate' | 'phosphate' | 'ammonia' | 'nitrite' | 'cover'

/**
 * One reading. Nitrate mg/L as NO3, phosphate mg/L as PO4, ammonia mg/L of total ammonia as N,
 * nitrite mg/L as NO2, cover 0 to 1.
 */
export interface Observation {
  readonly day: Day
  readonly quantity: ObservedQuantity
  readonly value: number
  /** True: `value` is the limit below which the kit read nothing. */
  readonly belowDetection: boolean
  readonly surface?: string
  readonly algae?: string
  /** Entry of the log this came from, for the derivation. */
  readonly entry?: string
}

/** What happened to the system at an instant, or what changed from then on. */
export type Event = { readonly day: Day; readonly entry?: string } & (
  | {
      readonly kind: 'water change'
      readonly volume_L: number
      readonly water?: { readonly NO3_mg_L: number; readonly PO4_mg_L: number }
    }
  | { readonly kind: 'media placed'; readonly mass_g: number; readonly medium?: Medium }
  | { readonly kind: 'media removed'; readonly medium?: Medium }
  | {
      /** Of floor and sand, or of a part of them, 0 to 1. */
      readonly kind: 'siphoning'
      readonly part?: number
    }
  /** From now on each day; of one feed, or without `feed` of all together in the shares they had. */
  | { readonly kind: 'feed change'; readonly g_per_day: number; readonly feed?: string }
  | {
      readonly kind: 'equipment change'
      readonly equipment: string
      readonly changes: Readonly<Record<string, unknown>>
    }
  | {
      readonly kind: 'hand removal'
      readonly surface: string
      readonly algae: string
      readonly share: number
      readonly leftToDrift: boolean
    }
  | { readonly kind: 'dose'; readonly substance: DosedSubstance; readonly mass_g: number }
  | {
      readonly kind: 'animals added'
      readonly taxon: string
      readonly count: number
      readonly mass_g?: number
    }
  | {
      readonly kind: 'animals lost'
      readonly taxon: string
      readonly count: number
      readonly mass_g?: number
      /** False: the bodies stay in the system with what they hold; left out where nobody knows. */
      readonly bodyTakenOut?: boolean
    }
  | {
      readonly kind: 'animals moved'
      readonly taxon: string
      readonly count: number
      /** Id of the vessel that they are in from now on. */
      readonly to: string
    }
  | { readonly kind: 'harvest'; readonly from: 'refugium' | 'turf scrubber'; readonly wet_g: number }
  /**
   * Of one surface, or without `surface` of all that a lamp shines on; what is left out stays as it was,
   * 0 h is the dark.
   */
  | {
      readonly kind: 'light change'
      readonly surface?: string
      readonly light_umol_m2_s?: number
      readonly light_h_per_day?: number
    }
  | { readonly kind: 'rock added'; readonly rock: Rock }
)

/** Ferric media where none is named. */
export type Medium = 'ferric' | 'carbon'

export type DosedSubstance =
  | 'ammonium chloride'
  | 'sodium nitrate'
  | 'potassium nitrate'
  | 'monopotassium phosphate'
  | 'disodium phosphate'
