import { type Equations, scatter } from './equations.ts'

/** Iterations at most: a nonlinear power iteration may wander, and the error control catches what it misses. */
const mostIterations = 40
const safety = 1.2
/** Of the tolerance: small against what the formulas bend over. */
const shift = 0.01

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
 * Fastest decay of the equations near `y`, per day: by power iteration in the norm of the tolerances, and
 * no slower than any account empties, since the iteration is blind to an account that moves no other. The
 * direction found is kept for the next call, which then needs few iterations.
 */
export function spectralRadius(
  equations: Equations,
  y: Float64Array,
  ratesNow: Float64Array,
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
  const emptying = fastestLoss(equations, y, ratesNow, weight, rates)
  let radius = 0
  for (let iteration = 0; iteration < mostIterations; iteration++) {
    const scale = shift / size
    for (let i = 0; i < direction.length; i++) shifted[i] = weight[i] > 0 ? y[i] + direction[i] * scale : y[i]
    equations.rates(shifted, flows)
    rates.fill(0)
    scatter(equations, flows, rates)
    for (let i = 0; i < direction.length; i++) direction[i] = weight[i] > 0 ? rates[i] - derivative[i] : 0
    size = norm(direction)
    const next = size / shift
    if (!(size > 0)) break
    const change = Math.abs(next - radius)
    radius = next
    if (iteration > 1 && change <= 0.02 * radius) break
  }
  return Math.max(radius, emptying) * safety
}

/** What leaves an account in a day as a share of what it holds, the largest; one below the shift counts as that. */
function fastestLoss(
  { from, to, fluxes, tolerance }: Equations,
  y: Float64Array,
  rates: Float64Array,
  weight: Float64Array,
  losses: Float64Array,
): number {
  losses.fill(0)
  for (let k = 0; k < fluxes; k++) {
    const source = rates[k] > 0 ? from[k] : to[k]
    if (source >= 0) losses[source] += Math.abs(rates[k])
  }
  let fastest = 0
  for (let i = 0; i < y.length; i++) {
    const share = losses[i] / Math.max(y[i], shift * tolerance[i])
    // What is no number is not larger either: the step that follows says which states it spoils.
    if (weight[i] > 0 && share > fastest) fastest = share
  }
  return fastest
}
