import type { Balance, BandedLedger, BandedRow } from './answers.ts'
import { weightedQuantiles } from './quantiles.ts'

/** A mean and the ends of its 90 % interval, µmol over the span. */
export interface Summed {
  readonly amount_umol: number
  readonly low_umol: number
  readonly high_umol: number
}

/** The sum of some rows: what goes together in a member is added in that member before the ends are taken. */
export const sumOfRows = (rows: readonly BandedRow[], weights: BandedLedger['weights']): Summed =>
  summed(
    rows.map(({ members }) => members),
    sum(rows.map(({ amount_umol }) => amount_umol)),
    weights,
  )

/** What some accounts together hold more, or less, at the end of the span. */
export const sumOfChanges = (balances: readonly Balance[], weights: BandedLedger['weights']): Summed =>
  summed(
    balances.map(({ changes }) => changes),
    sum(balances.map(({ start_umol, end_umol }) => end_umol - start_umol)),
    weights,
  )

function summed(
  lists: readonly (readonly number[])[],
  amount_umol: number,
  weights: readonly number[],
): Summed {
  const totals = weights.map((_, member) => sum(lists.map((list) => list[member] ?? 0)))
  const [low_umol, high_umol] = weightedQuantiles(totals, weights, [0.05, 0.95])
  return { amount_umol, low_umol, high_umol }
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0)
