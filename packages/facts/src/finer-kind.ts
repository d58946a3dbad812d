import list from './data/finer-kinds.json' with { type: 'json' }
import type { Provenance } from './fact.ts'
import type { Response } from './response.ts'
import type { Trait } from './trait.ts'

/** A kind within a kind, where what to do differs by genus. */
export interface FinerKind {
  readonly key: string
  readonly title: string
  readonly latin: string
  /** How often keepers ask about it, relative to its siblings. */
  readonly frequency: number
  readonly hazard: string
}

/** The few questions that part the genera of one kind. */
export interface FinerKinds {
  readonly parent: string
  readonly kinds: readonly FinerKind[]
  /** Traits that only this kind is asked for. */
  readonly traits: readonly Trait[]
  /** Traits of the field key that tell here too. */
  readonly shared: readonly string[]
  /** By finer kind, trait and state; a state that is not named stands at the floor. */
  readonly chances: Readonly<Record<string, Readonly<Record<string, Readonly<Record<string, number>>>>>>
  readonly responses: readonly Response[]
  readonly source: string
  readonly provenance: Provenance
  readonly note: string
}

const all = list as readonly unknown[] as readonly FinerKinds[]

/** Every kind that has finer ones. */
export const finerKinds = (): readonly FinerKinds[] => all

/** The finer kinds within a kind, or undefined where it has none that differ in what to do. */
export const finerKindsOf = (kind: string): FinerKinds | undefined =>
  all.find(({ parent }) => parent === kind)

/** A finer kind by its key, or undefined where there is none. */
export const finerKind = (key: string): FinerKind | undefined =>
  all.flatMap(({ kinds }) => kinds).find((kind) => kind.key === key)
