import table from './data/trait-chances.json' with { type: 'json' }
import type { Provenance } from './fact.ts'

/**
 * Of a hundred keepers who have this kind and look at this trait, how many note each state, as a share:
 * mistakes of the eye and the variety of the living thing are both in it. Judgments, worth ten to twenty
 * observations each; source and provenance are of the description that the states rest on.
 */
export interface TraitChances {
  /** By state; one that is not named stands at the floor. */
  readonly chances: Readonly<Record<string, number>>
  readonly source: string
  readonly provenance: Provenance
  readonly note?: string
}

/** No single answer rules a kind out: the least chance of any state. */
export const leastChance = 0.005

const all = table as Readonly<Record<string, Readonly<Record<string, TraitChances>>>>

/** The kinds that the field key tells apart: those of algae, and not_algae. */
export const kindsOfKey = (): readonly string[] => Object.keys(all)

/** What is known of a trait of a kind, or undefined where the table has none. */
export const traitChances = (kind: string, trait: string): TraitChances | undefined => all[kind]?.[trait]

/** The share of those who have the kind and note this state. */
export const traitChance = (kind: string, trait: string, state: string): number =>
  all[kind]?.[trait]?.chances[state] ?? leastChance
