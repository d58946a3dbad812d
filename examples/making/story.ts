import type { BodyOf, EntryKind } from '@holdfast/logbook'
import type { Tank } from './truth.ts'

/** An invented system, what was done to it, what nobody in the story knows, and when somebody looked. */
export interface Story {
  /** What the system file says, as a keeper would write it. */
  readonly document: { readonly id: string; readonly timeZone: string }
  /** The first day of the invented log, and the last. */
  readonly firstDate: string
  readonly lastDate: string
  readonly tank: Tank
  readonly deeds: readonly Deed[]
  readonly tests: Tests
  readonly surveys: Surveys
}

/** Something that the keeper did or wrote down on a date. */
export type Deed = {
  [K in EntryKind]: { readonly date: string; readonly kind: K; readonly body: BodyOf<K> }
}[EntryKind]

/** The days on which the water was tested, and what went wrong with the tests. */
export interface Tests {
  /** Of the kits and of the eye; what the keeper reads is drawn from it. */
  readonly seed: number
  readonly dates: readonly string[]
  /** No phosphate was tested from the one date to the other. */
  readonly noReagent: { readonly from: string; readonly to: string }
  /** Phosphate with a slip of the decimal point. */
  readonly slip: string
  /** A row that was typed twice. */
  readonly twice: string
  readonly remarks: Readonly<Record<string, string>>
}

export interface Surveys {
  readonly dates: readonly string[]
  readonly of: readonly { readonly surface: string; readonly algae: string; readonly called: string }[]
}
