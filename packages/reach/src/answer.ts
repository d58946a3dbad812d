import type { Band } from '@holdfast/crew-plan'
import type { Stand } from '@holdfast/ecosystem'
import type { Caution, GrazerGroup } from '@holdfast/facts'

/** One kind of algae on one patch in the coming week; grams of dry algae. */
export interface PlaceReach extends Stand {
  readonly area_m2: number
  /** What grows, before anything of it is eaten. */
  readonly growth_g_week: Band
  /** What of it nobody eats. */
  readonly left_g_week: Band
  /** By whom the rest is eaten, who eats most first. */
  readonly eaten: readonly { readonly taxon: string; readonly g_week: number }[]
  /** Dry algae on the patch today, g. */
  readonly mass_g: number
  /** Of the patch, 0 to 1, and height of the stand there. */
  readonly cover: number
  readonly height_mm: number
  /** Whether anybody of the crew gets there, and eats this kind. */
  readonly met: 'eaten' | 'not eaten' | 'not reached'
  /** A kind that keepers like to have. */
  readonly wanted: boolean
}

/** What covers a surface today, in all its patches together. */
export interface Covered {
  readonly surface: string
  readonly kind: string
  /** Of the surface, 0 to 1. */
  readonly cover: Band
}

/** One taxon of the crew that lives there. */
export interface GrazerReach {
  readonly taxon: string
  readonly tradeName: string
  readonly group: GrazerGroup
  /** Living animals, a median and so not always whole. */
  readonly living: number
  readonly eaten_g_week: Band
  /** Share of its appetite that it finds algae for, 0 to 1. */
  readonly used: Band
  /** Patches that it gets to, as keys such as 'glass open'. */
  readonly gets: readonly string[]
}

/** One thing to do about a place. */
export interface Deed {
  /** Key of the measure in the catalogue. */
  readonly measure: string
  readonly says: string
  readonly cautions: readonly Caution[]
}

/** A patch where much is left, the kind of which most is left there, and what to do. */
export interface Exposed extends Stand {
  /** Of all unwanted kinds together, grams of dry algae a week. */
  readonly left_g_week: Band
  readonly why: string
  readonly deeds: readonly Deed[]
}

export interface ReachAnswer {
  readonly from: number
  readonly to: number
  readonly worlds: number
  /** The most exposed first: by what is left on a square metre. */
  readonly places: readonly PlaceReach[]
  /** Of each kind on each surface, in the order of the description. */
  readonly covered: readonly Covered[]
  readonly grazers: readonly GrazerReach[]
  /** Three at most. */
  readonly exposed: readonly Exposed[]
}
