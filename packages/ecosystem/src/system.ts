import type { OwnAnimal } from '@holdfast/facts'
import type { Day } from './log.ts'

/**
 * The description of a system on one day: bodies of water that share water, what is in them and how
 * they are kept. Plain data; keys carry their unit where the type cannot.
 */
export interface System {
  readonly id: string
  readonly name: string
  /** IANA zone in which the keeper's dates are meant. */
  readonly timeZone: string
  readonly vessels: readonly Vessel[]
  readonly flow: readonly Flow[]
  readonly surfaces: readonly Surface[]
  readonly rock: readonly Rock[]
  readonly sand?: Sand
  readonly source_water: NewWater
  readonly salt_mix: NewWater
  /** practical salinity (PSS-78) */
  readonly salinity_psu: number
  readonly temperature_C: number
  readonly pH?: number
  readonly evaporation_L_per_day: number
  readonly feeds: readonly Feed[]
  readonly equipment: readonly Equipment[]
  readonly animals: readonly Animals[]
  /** Animals that the catalogue does not have, each like one that it has. */
  readonly own_animals?: readonly OwnAnimal[]
  readonly corals?: Corals
  /** Algae kinds present on the first day; a kind not named here nor surveyed never appears. */
  readonly algae: readonly AlgaePresent[]
}

export type VesselKind = 'display' | 'sump' | 'refugium' | 'grow-out' | 'curing bin'

export interface Vessel {
  readonly id: string
  readonly kind: VesselKind
  /** Net water, L. */
  readonly volume_L: number
  /** Nominal inner volume, L; least volumes of animals are held against it. */
  readonly glass_volume_L?: number
  readonly length_cm?: number
}

/** Water exchanged between two vessels, both ways. */
export interface Flow {
  readonly a: string
  readonly b: string
  readonly L_per_hour: number
}

export type SurfaceKind =
  | 'rock_face'
  | 'rock_underside'
  | 'glass'
  | 'sand'
  | 'plumbing_overflow'
  | 'equipment'
  | 'frag_rack'

export interface Surface {
  readonly id: string
  readonly vessel: string
  readonly kind: SurfaceKind
  readonly area_m2: number
  /** At the surface while the lamp is on, µmol photons m⁻² s⁻¹. */
  readonly light_umol_m2_s: number
  readonly light_h_per_day: number
  readonly age_days: number
  /** Behind a comb or lid: only animals that pass the opening get in. */
  readonly enclosed?: boolean
  readonly opening_mm?: number
  readonly hand_cleaned_every_days?: number
}

export type RockKind = 'cured live' | 'uncured live' | 'quarried dry' | 'man-made dry' | 'dried ex-ocean'

export interface Rock {
  readonly kind: RockKind
  readonly mass_kg: number
  readonly age_days: number
  /** Days it lay in sea water before it came into the system; without it, as long as it has been there. */
  readonly cured_days?: number
}

export interface Sand {
  readonly mass_kg: number
  readonly depth_cm: number
}

/** Kinds of new water, and of salt in it, of which the catalogue knows what they usually bring. */
export type NewWaterKind = 'tap water' | 'reverse osmosis' | 'deionised' | 'synthetic salt'

/**
 * What water brings in before it is used; concentrations of the ion (NO3, PO4), mg/L. What is not told is
 * usual of its kind where that is one of `NewWaterKind`, else nothing.
 */
export interface NewWater {
  readonly kind?: string
  readonly NO3_mg_L?: number
  readonly PO4_mg_L?: number
  /** Silicate as SiO2. */
  readonly SiO2_mg_L?: number
}

/** A feed as fed (frozen: wet as thawed); mass fractions as fed. What is not told is that of its kind in the catalogue. */
export interface Feed {
  readonly kind: string
  readonly g_per_day: number
  readonly N_mass_fraction?: number
  readonly P_mass_fraction?: number
  readonly C_mass_fraction?: number
  readonly dry_fraction?: number
  /** True where the keeper did not tell how much: `g_per_day` is usual then, and taken in a wide band. */
  readonly untold?: boolean
}

export type Equipment =
  | WaterChangeRoutine
  | ContinuousWaterChange
  | Skimmer
  | MechanicalFilter
  | FerricMediaReactor
  | PhosphateBinder
  | ActivatedCarbon
  | OrganicCarbonDosing
  | DenitrifyingReactor
  | UltravioletLamp
  | Refugium
  | TurfScrubber
  | OtherEquipment

/** The routine of water changes; changes that happened are events. */
export interface WaterChangeRoutine {
  readonly kind: 'water change'
  readonly volume_L: number
  readonly every_days: number
  /** Day of the first one; without it one interval after the log begins. */
  readonly first?: Day
}

/** Water that a pump changes all day. */
export interface ContinuousWaterChange {
  readonly kind: 'continuous water change'
  readonly L_per_day: number
}

/** A foam fractionator. */
export interface Skimmer {
  readonly kind: 'skimmer'
  readonly rated_for_L?: number
  readonly cup_emptied_every_days?: number
  readonly air_L_per_hour?: number
  /** Spans of days in which it was off. */
  readonly off?: readonly (readonly [Day, Day])[]
}

export type PhosphateMedium = 'iron hydroxide' | 'activated alumina'

export interface FerricMediaReactor {
  readonly kind: 'ferric media reactor'
  /** Iron hydroxide where nothing is said. */
  readonly medium?: PhosphateMedium
  /** Dry mass of the media, g. */
  readonly mass_g: number
  readonly flow_L_per_hour?: number
  readonly placed?: Day
  readonly removed?: Day
  readonly replaced_every_days?: number
  /** Low, typical, high, where the keeper knows the medium; mg P per g dry. */
  readonly capacity_mg_P_per_g?: readonly [number, number, number]
}

/** A pad or a bag that holds particles until it is changed; never changed, it takes nothing out. */
export interface MechanicalFilter {
  readonly kind: 'filter floss' | 'filter sock'
  readonly changed_every_days?: number
  readonly mesh_um?: number
}

/** A solution of lanthanum that is dripped in; the solid it makes leaves only through a fine filter. */
export interface PhosphateBinder {
  readonly kind: 'phosphate binder'
  readonly La_mg_per_day: number
}

export interface ActivatedCarbon {
  readonly kind: 'activated carbon'
  readonly mass_g?: number
  readonly placed?: Day
  readonly replaced_every_days?: number
}

export type CarbonSubstance = 'ethanol' | 'vinegar' | 'acetate'

/** Organic carbon that feeds bacteria: a daily volume since a day, or volumes of ethanol from days on. */
export interface OrganicCarbonDosing {
  readonly kind: 'organic carbon dosing'
  readonly substance?: CarbonSubstance
  readonly mL_per_day?: number
  readonly since?: Day
  readonly schedule?: readonly { readonly from_: Day; readonly mL_ethanol_per_day: number }[]
}

/** A closed bed without oxygen that turns nitrate into nitrogen gas, fed with organic carbon or with sulphur. */
export interface DenitrifyingReactor {
  readonly kind: 'denitrifying reactor'
  readonly fed: 'organic' | 'sulphur'
  readonly media_L: number
  readonly flow_L_per_hour?: number
}

export interface UltravioletLamp {
  readonly kind: 'ultraviolet lamp'
  readonly flow_L_per_hour?: number
}

/** Algae grown under a lamp of their own and harvested. Without its mass, lit area and light it is not modelled. */
export interface Refugium {
  readonly kind: 'refugium'
  /** Vessel it stands in. */
  readonly vessel?: string
  /** Genus or trade word; one we have no figures for is taken for Chaetomorpha, and the ledger says so. */
  readonly algae?: string
  /** Drained mass on the first day. */
  readonly wet_mass_g?: number
  /** Dry mass of wet, 0 to 1. */
  readonly dry_fraction?: number
  /** Mass fractions of dry mass on the first day. */
  readonly N_of_dry?: number
  readonly P_of_dry?: number
  readonly lit_area_m2?: number
  readonly light_umol_m2_s?: number
  readonly light_h_per_day?: number
  readonly light_off_since?: Day
  readonly harvest_g_wet?: number
  readonly harvest_every_days?: number
  readonly last_harvest?: Day
}

/** A lit screen with water running over it, scraped at intervals. */
export interface TurfScrubber {
  readonly kind: 'turf scrubber'
  readonly screen_m2?: number
  readonly light_umol_m2_s?: number
  readonly light_h_per_day?: number
  readonly harvest_every_days?: number
}

/** Equipment without a process of its own. Its keys are kept as given. */
export interface OtherEquipment {
  readonly kind: 'automatic top-off' | 'circulation pump' | 'heater'
  readonly [key: string]: unknown
}

export interface Animals {
  readonly kind: string
  /** Key of the catalogue of grazers or of the system's own animals, where it is one. */
  readonly taxon?: string
  readonly count: number
  /** Mass of one animal, g. */
  readonly mass_g?: number
  readonly adult_size_cm?: number
  readonly role: 'fish' | 'grazer' | 'other'
  /** Id of the vessel that they live and eat in; without it they eat wherever their kind gets to. */
  readonly vessel?: string
}

export interface Corals {
  readonly kind: string
  readonly area_m2: number
}

export interface AlgaePresent {
  /** Key of the catalogue of algae kinds, such as hair_green. */
  readonly kind: string
  readonly surface: string
  /** Share of the surface, 0 to 1. */
  readonly cover: number
}
