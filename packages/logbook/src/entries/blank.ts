import type { System } from '@holdfast/ecosystem'
import type { QuantityName } from '@holdfast/quantities'

/** What a blank holds, and so how its text is read; a quantity is one of `@holdfast/quantities`. */
export type Holds =
  | QuantityName
  /** A mass that is given every day, such as 4 g/d. */
  | 'mass-per-day'
  /** A number without a unit. */
  | 'number'
  /** A whole number, 1 or more. */
  | 'count'
  /** A part of the whole, such as 12 % or 0.12. */
  | 'share'
  /** One of the choices. */
  | 'choice'
  | 'date'
  | 'words'

/** An answer that a blank offers; `words` is what people read. */
export interface Choice {
  readonly value: string
  readonly words: string
}

/** What a person fills in. Form, flags of the command line and the reading of texts are made of it. */
export interface Blank {
  /** Key of the text in what was typed, and name of the flag. */
  readonly name: string
  readonly label: string
  readonly holds: Holds
  readonly required: boolean
  /** What to write, with an example. */
  readonly hint: string
  /** Unit (with its form) of a figure that has none. */
  readonly unit?: string
  /** True: a limit such as <0.03 or a span such as 5-10 is taken as well as one number. */
  readonly limits?: boolean
  /** Bounds of the number taken, in the canonical unit of what the blank holds. */
  readonly above?: number
  readonly from?: number
  readonly to?: number
  readonly choices?: readonly Choice[]
  /** True: words that are none of the choices are taken as well. */
  readonly open?: boolean
}

/** Texts by the names of their blanks. */
export type Typed = Readonly<Record<string, string>>

/** What is known while a person fills in: the system on the day, where it is described. */
export interface About {
  readonly system?: System
  /** Kinds of algae that are known by name; without them any word is taken for a kind. */
  readonly algae?: readonly Choice[]
}

/** Choices of which each is read as it is written. */
export const choicesOf = (values: readonly string[]): readonly Choice[] =>
  [...new Set(values)].map((value) => ({ value, words: value }))
