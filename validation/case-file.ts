/** A textbook case as its file says it: a system, a short log, and what an expert says of them. */
import type { Animals, Corals, Feed, Flow, Rock, Sand, Surface, Vessel } from '@holdfast/ecosystem'

export interface CaseFile {
  readonly id: string
  readonly title: string
  readonly situation?: string
  /** ISO dates: first day of the log; the day on which the expert looks. */
  readonly start: string
  readonly asof: string
  readonly system: CaseSystem
  /** Shares that the closed forms hold fixed. */
  readonly given?: Readonly<Record<string, unknown>>
  readonly log: { readonly readings: readonly CaseReading[]; readonly events: readonly CaseEvent[] }
  readonly expert: readonly Statement[]
  /** Of a variant: the case as it was lived. */
  readonly variantOf?: CaseFile
}

/** Water before use: mg/L of the ion, and whatever else it carries under a key that ends in its unit. */
export interface CaseWater {
  readonly kind?: string
  readonly NO3_mg_L?: number
  readonly PO4_mg_L?: number
  readonly salinity_psu?: number
  readonly [key: string]: unknown
}

export interface CaseSystem {
  readonly vessels: readonly Vessel[]
  readonly flow: readonly Flow[]
  readonly surfaces: readonly Surface[]
  readonly rock: readonly Rock[]
  readonly sand?: Sand | null
  readonly source_water: CaseWater
  readonly salt_mix: CaseWater
  readonly salinity_psu: number
  readonly temperature_C: number
  readonly pH?: number
  readonly evaporation_L_per_day: number
  readonly feeds: readonly Feed[]
  readonly equipment: readonly CaseEquipment[]
  readonly animals: readonly Animals[]
  readonly corals?: Corals | null
}

export interface CaseEquipment {
  readonly kind: string
  readonly [key: string]: unknown
}

export interface CaseReading {
  readonly date: string
  readonly quantity: string
  readonly value: number
  readonly unit?: string
  readonly form?: string
  readonly below_detection?: boolean
  readonly note?: string
}

export interface CaseEvent {
  readonly date: string
  readonly kind: string
  readonly [key: string]: unknown
}

export interface Check {
  readonly quantity: string
  readonly [key: string]: unknown
}

export type Plain = number | string | boolean

/** What an answer is held against; exactly one of the first five. */
export interface Expected {
  readonly equals?: Plain | readonly Plain[] | Readonly<Record<string, Plain>>
  readonly one_of?: readonly Plain[]
  readonly range?: readonly [number, number]
  readonly includes?: readonly Plain[]
  readonly excludes?: readonly Plain[]
  readonly closed_form?: number
  readonly closed_form_bounds?: readonly number[]
}

export interface Statement {
  readonly id: string
  readonly statement: string
  readonly check: Check
  readonly expected: Expected
  readonly reason?: string
  readonly provenance?: string
  readonly strength: 'certain' | 'usual'
}
