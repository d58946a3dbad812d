import type { Cause } from '../answer.ts'

/** A measure for a cause, with its own days where they differ from the usual. */
export interface Step {
  readonly measure: string
  readonly days?: { readonly low: number; readonly high: number }
}

export interface Found extends Cause {
  /** Causes of a lower rank come first, whatever their size. */
  readonly rank: Rank
  /** Share of what comes in, 0 to 1; the larger first within a rank. */
  readonly size: number
  readonly steps: readonly (string | Step)[]
  /** Keys of what is to be minded whatever is done. */
  readonly cautions?: readonly string[]
}

/**
 * Danger before what is unfinished, what corals lack before what is too much, what is broken before what always
 * was so, water before a place, a place before the kind.
 */
export const ranks = ['danger', 'unfinished', 'short', 'fault', 'load', 'place', 'crew', 'kind'] as const
export type Rank = (typeof ranks)[number]

/** mg/L as a keeper reads them. */
export const amount = (value: number): string => `${Number(value.toPrecision(2))} mg/L`

export const percent = (share: number): string =>
  `${share < 0.1 ? Number((100 * share).toPrecision(2)) : Math.round(100 * share)} %`
