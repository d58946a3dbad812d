import { hasSpread } from '@holdfast/quantities'
import type { Explanation, FactUsed } from '../worker/answers.ts'
import { written } from './numbers.ts'

/** A figure that was worked out, with its 90 % interval and everything needed to see where it comes from. */
export interface ComputedFigure {
  /** Names it in the address of the page, the same in every language: `stream.N.outside.feed`. */
  readonly id: string
  /** What it is the figure of: "Nitrate on 12 December". */
  readonly name: string
  readonly value: number
  readonly low: number
  readonly high: number
  readonly unit: string
  /** Less than this is not worth telling apart: a power of ten, in its unit. */
  readonly least?: number
  /** Made when it is opened: a table holds hundreds of figures. */
  readonly derivation: () => Derivation
}

export interface Derivation {
  /** One or two sentences: what was done. */
  readonly says: string
  /** Processes behind it, each with its formulas and facts. */
  readonly processes: readonly Explanation[]
  /** Steps from amounts to the figure. */
  readonly steps: readonly { readonly formula: string; readonly withValues: string }[]
  /** Facts that enter beside those of the processes. */
  readonly facts: readonly FactUsed[]
  /** Ids of entries of the log, the latest day last; what they say is asked for as they are shown. */
  readonly entries: readonly string[]
}

/** An entry of the log as a derivation shows it. */
export interface LogEntry {
  readonly id: string
  /** When it was so, as the keeper said it. */
  readonly at: string
  readonly text: string
}

/** "4.1 (2.6 to 6.0) mg/L NO3" */
export function figureText(
  figure: Pick<ComputedFigure, 'value' | 'low' | 'high' | 'unit' | 'least'>,
): string {
  const { value, low, high } = written(figure.value, figure.low, figure.high, figure.least)
  if (isExact(figure) || (low === '0' && high === '0')) return `${value} ${figure.unit}`
  return `${value} (${low} to ${high}) ${figure.unit}`
}

/** A figure that follows from the description alone has no spread, and is written without one. */
export const isExact = ({ value, low, high }: Pick<ComputedFigure, 'value' | 'low' | 'high'>) =>
  !hasSpread({ value, low, high })
