import { coefficients } from './chebyshev.ts'

/** Stages of the longest step; a step that needs more is made shorter. */
export const mostStages = 100

const perRow = 5

/**
 * Coefficients of all stages as the kernel reads them: first the row of a member that stays as it is, then
 * an empty one, since no step has a single stage, and then the rows of 2, 3 and more stages. A row: on the last change, on the one before, on the rates, on the
 * rates at the start, and what these rates count for in the whole flows.
 */
export function coefficientTable(): Float64Array {
  const rows = [
    [1, 0, 0, 0, 0],
    [0, 0, 0, 0, 0],
  ]
  for (let stages = 2; stages <= mostStages; stages++) {
    const c = coefficients(stages)
    rows.push([0, 0, c.first, 0, c.weights[0]])
    for (let j = 2; j <= stages; j++)
      rows.push([c.onLast[j], c.onBefore[j], c.onRate[j], c.onFirstRate[j], c.weights[j - 1]])
  }
  const table = new Float64Array(perRow * rows.length)
  for (const [k, row] of rows.entries()) table.set(row, perRow * k)
  return table
}
