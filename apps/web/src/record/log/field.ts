import type { Blank } from '@holdfast/logbook'

/** What every field of a form is given. */
export interface FieldOf {
  /** Of the control; two forms may stand on one page. */
  readonly id: string
  readonly blank: Blank
  readonly text: string
  /** What is wrong with it, in sentences. */
  readonly issues: readonly string[]
  readonly onText: (text: string) => void
}

/** What a screen reader reads with the field: the hint, or what is wrong. */
export const hintOf = (id: string): string => `${id}-hint`
