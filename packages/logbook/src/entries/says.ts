import type { Typed } from './blank.ts'

interface Written {
  readonly text: string
  readonly typed?: Typed
}

/**
 * What an entry says: our sentence of what was understood where it was typed into blanks, and the
 * keeper's own words where it was written as a text, as in a sheet.
 */
export const inWordsOf = ({ text, typed }: Written, sentence: string): string =>
  typed !== undefined || text.trim() === '' ? sentence : text

/** A share as people read it. @example percent(0.125) // '12.5 %' */
export const percent = (share: number): string => `${Number((100 * share).toPrecision(3))} %`

/** A figure with a few digits. @example figure(60.5666) // '60.57' */
export const figure = (value: number): string => String(Number(value.toPrecision(4)))

/** A share to start a correction with: in percent where that says it to the last bit, else as the number. */
export const shareTyped = (share: number): string =>
  Number.parseFloat(percent(share)) / 100 === share ? percent(share) : String(share)
