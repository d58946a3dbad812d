import type { LookAlike, Response, Trait } from '@holdfast/facts'

/** What a keeper noted: the state of each trait looked at. What was not looked at is absent. */
export type Answers = Readonly<Record<string, string>>

/** A table of kinds and traits that answers can be weighed by: that of all growths, or of the genera of one kind. */
export interface Key {
  readonly kinds: readonly KindOfKey[]
  readonly traits: readonly Trait[]
  /** Of those who have the kind and look, the share who note this state: over 0, at most 1. */
  readonly chance: (kind: string, trait: string, state: string) => number
  /** How common the kind is before anything is looked at; any scale. */
  readonly frequency: (kind: string, answers: Answers) => number
  /** Traits that `frequency` has used: counted twice they would be. */
  readonly inFrequency: readonly string[]
  readonly responses: readonly Response[]
  /** Kinds that are taken for each other. */
  readonly lookAlikes: readonly LookAlike[]
  /** Kinds that may be toxic slime. */
  readonly slime: readonly string[]
  /** Kinds among which the microscope is worth fetching; all where it is not given. */
  readonly microscopeAmong?: readonly string[]
}

export interface KindOfKey {
  readonly key: string
  readonly title: string
}

/** A kind and its chance, 0 to 0.98. */
export interface Chance extends KindOfKey {
  readonly chance: number
}

/** The chances together of those kinds that are named. */
export const chanceOf = (chances: readonly Chance[], kinds: readonly string[]): number =>
  chances.reduce((sum, { key, chance }) => (kinds.includes(key) ? sum + chance : sum), 0)
