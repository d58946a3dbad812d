import { type Equations, scatter } from './equations.ts'

/** Iterations at most: a nonlinear power iteration may wander, and the error control catches what it misses. */
const mostIterations = 40
const safety = 1.2

export interface RadiusWork {
  readonly direction: Float64Array
  readonly shifted: Float64Array
  readonly rates: Float64Array
  readonly flows: Float64Array
}

export function radiusWork(equations: Equations): RadiusWork {
  const direction = new Float64Array(equations.states)
  // A start with a part in every direction, and no chance: the same run gives the same bits.
  for (let i = 0; i < direction.length; i++) direction[i] = i % 2 === 0 ? 1 : -0.7
  return {
    direction,
    shifted: new Float64Array(equations.states),
    rates: new Float64Array(equations.states),
    flows: new Float64Array(equations.fluxes),
  }
}

/**
 * Fastest decay of the equations near `y`, per day, by power iteration in the norm of the tolerances.
 * The direction found is kept for the next call, which then needs few iterations.
 */
export function spectralRadius(
  equations: Equations,
  y: Float64Array,
  derivative: Float64Array,
  weight: Float64Array,
  work: RadiusWork,
): number {
  const { direction, shifted, rates, flows } = work
  const norm = (v: Float64Array): number => {
    let sum = 0
    for (let i = 0; i < v.length; i++) if (weight[i] > 0) sum += (v[i] / weight[i]) * (v[i] / weight[i])
    return Math.sqrt(sum)
  }
  let size = norm(direction)
  if (!(size > 0)) {
    for (let i = 0; i < direction.length; i++) direction[i] = weight[i]
    size = norm(direction)
  }
  let radius = 0
  for (let iteration = 0; iteration < mostIterations; iteration++) {
    // A shift of a hundredth of the tolerance: small against what the formulas bend over.
    const scale = 0.01 / size
    for (let i = 0; i < direction.length; i++) shifted[i] = weight[i] > 0 ? y[i] + direction[i] * scale : y[i]
    equations.rates(shifted, flows)
    rates.fill(0)
    scatter(equations, flows, rates)
    for (let i = 0; i < direction.length; i++) direction[i] = weight[i] > 0 ? rates[i] - derivative[i] : 0
    size = norm(direction)
    const next = size / 0.01
    if (!(size > 0)) return radius * safety
    const change = Math.abs(next - radius)
    radius = next
    if (iteration > 1 && change <= 0.02 * radius) break
  }
  return radius * safety
}
