import conditions from './data/crew-conditions.json' with { type: 'json' }
import kinds from './data/crew-kinds.json' with { type: 'json' }
import pools from './data/crew-pools.json' with { type: 'json' }
import type { Provenance } from './fact.ts'
import type { GrazerGroup } from './grazer.ts'

/** Like animals that share room: what all of them eat together is held against what one kind alone is kept at. */
export interface CrewPool {
  readonly key: string
  readonly title: string
  readonly groups: readonly GrazerGroup[]
  /** Id of the fact: how often the room of one kind there is. */
  readonly room: string
  readonly source: string
  readonly provenance: Provenance
}

/** How a state of the system that pair rules name in words is told from its description. Words without a row are for the keeper to judge. */
export interface CrewCondition {
  readonly words: string
  readonly shorterThan_cm?: number
  readonly hotterThan_C?: number
  readonly colderThan_C?: number
  readonly youngerThan_days?: number
  readonly sandYoungerThan_days?: number
  readonly without?: 'sand' | 'seaweed fed'
  /** Another table or the water decides it. */
  readonly judgedBy?: 'volumes' | 'neighbours' | 'water' | 'steps'
  /** Small animals of one way of biting, for which a shorter vessel will do. */
  readonly except?: {
    readonly mouth: string
    readonly adultSizeUpTo_cm: number
    readonly shorterThan_cm: number
  }
}

const wanted: ReadonlySet<string> = new Set(kinds.wanted)
const stubborn: ReadonlySet<string> = new Set(kinds.stubborn)
const reckoned: ReadonlySet<string> = new Set(kinds.reckonedHazards)

/** Who shares room with whom; groups in no pool are limited by their volumes. */
export const crewPools = (): readonly CrewPool[] => pools as readonly CrewPool[]

/** How conditions of pair rules are told. */
export const crewConditions = (): readonly CrewCondition[] => conditions as readonly CrewCondition[]

/** Does a keeper want this kind of algae to grow: then no crew is bought against it. */
export const wantedKind = (kind: string): boolean => wanted.has(kind)

/** Is it a kind that few animals take and that spreads when it is torn. */
export const stubbornKind = (kind: string): boolean => stubborn.has(kind)

/**
 * Is a hazard one that a plan charges for: not where rules of company, hunger or the model already reckon with it, or
 * a lid settles it.
 */
export const chargedHazard = (hazard: string): boolean => !reckoned.has(hazard)
