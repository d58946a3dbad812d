import type { Shape } from './shape.ts'

/**
 * Keeps floored states at or above zero by scaling what leaves them, all by one factor and at both
 * ends: no account is ever clipped, so no atom is made.
 *
 * @param y      states before
 * @param flows  whole flows of the step, changed in place
 * @returns the number of states whose outflow was scaled
 */
export function limit(
  shape: Pick<Shape, 'states' | 'from' | 'to' | 'floored'>,
  y: Float64Array,
  flows: Float64Array,
  work: LimiterWork,
): number {
  const { from, to, states, floored } = shape
  const fluxes = flows.length
  const { gains, losses } = work
  let limited = 0
  // Scaling one outflow lessens another's inflow, so the passes repeat; each can only lessen flows.
  for (let pass = 0; pass <= states; pass++) {
    gains.fill(0)
    losses.fill(0)
    for (let k = 0; k < fluxes; k++) {
      const flow = flows[k]
      if (from[k] >= 0) {
        if (flow > 0) losses[from[k]] += flow
        else gains[from[k]] -= flow
      }
      if (to[k] >= 0) {
        if (flow > 0) gains[to[k]] += flow
        else losses[to[k]] -= flow
      }
    }
    let again = false
    for (let i = 0; i < states; i++) {
      work.factor[i] = 1
      if (floored[i] === 0 || losses[i] <= 0) continue
      const available = y[i] + gains[i]
      if (available - losses[i] >= 0) continue
      // A hair less than all, so that rounding does not take the last bit below zero.
      work.factor[i] = available > 0 ? (available / losses[i]) * (1 - 1e-12) : 0
      again = true
      limited++
    }
    if (!again) return limited
    for (let k = 0; k < fluxes; k++) {
      const source = flows[k] > 0 ? from[k] : to[k]
      if (source >= 0) flows[k] *= work.factor[source]
    }
  }
  return limited
}

export interface LimiterWork {
  readonly gains: Float64Array
  readonly losses: Float64Array
  readonly factor: Float64Array
}

export const limiterWork = (states: number): LimiterWork => ({
  gains: new Float64Array(states),
  losses: new Float64Array(states),
  factor: new Float64Array(states),
})
