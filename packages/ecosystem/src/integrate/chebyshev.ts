/**
 * Coefficients of the stabilised explicit Runge-Kutta-Chebyshev method of second order (Sommeijer,
 * Shampine & Verwer 1998, J Comput Appl Math 88:315, doi:10.1016/S0377-0427(97)00219-7; formulas as
 * recalled, the order and the reach on the negative axis are tested).
 */
export interface Coefficients {
  readonly stages: number
  readonly first: number
  /** For stage j from 2: on the change since the start at the stage before, and at the one before that. */
  readonly onLast: Float64Array
  readonly onBefore: Float64Array
  /** Times the step: on the rates of the stage before, on the rates at the start. */
  readonly onRate: Float64Array
  readonly onFirstRate: Float64Array
  /** Times the step: what the rates of each stage, the start being 0, give to the change of the whole step. */
  readonly weights: Float64Array
  /** Share of the step that is over at each stage: 0 at the start, 1 at the last. */
  readonly nodes: Float64Array
}

const damping = 2 / 13
const made = new Map<number, Coefficients>()

/** @param stages at least 2 */
export function coefficients(stages: number): Coefficients {
  const known = made.get(stages)
  if (known) return known
  const w0 = 1 + damping / (stages * stages)
  const t = new Float64Array(stages + 1)
  const dt = new Float64Array(stages + 1)
  const ddt = new Float64Array(stages + 1)
  t[0] = 1
  t[1] = w0
  dt[1] = 1
  for (let j = 2; j <= stages; j++) {
    t[j] = 2 * w0 * t[j - 1] - t[j - 2]
    dt[j] = 2 * t[j - 1] + 2 * w0 * dt[j - 1] - dt[j - 2]
    ddt[j] = 4 * dt[j - 1] + 2 * w0 * ddt[j - 1] - ddt[j - 2]
  }
  const w1 = dt[stages] / ddt[stages]
  const b = new Float64Array(stages + 1)
  for (let j = 2; j <= stages; j++) b[j] = ddt[j] / (dt[j] * dt[j])
  b[0] = b[2]
  b[1] = b[2]
  const onLast = new Float64Array(stages + 1)
  const onBefore = new Float64Array(stages + 1)
  const onRate = new Float64Array(stages + 1)
  const onFirstRate = new Float64Array(stages + 1)
  for (let j = 2; j <= stages; j++) {
    onLast[j] = (2 * b[j] * w0) / b[j - 1]
    onBefore[j] = -b[j] / b[j - 2]
    onRate[j] = (2 * b[j] * w1) / b[j - 1]
    onFirstRate[j] = -(1 - b[j - 1] * t[j - 1]) * onRate[j]
  }
  const stepping = { stages, first: b[1] * w1, onLast, onBefore, onRate, onFirstRate }
  const result = { ...stepping, weights: weightsOf(stepping), nodes: nodesOf(stepping) }
  made.set(stages, result)
  return result
}

type Stepping = Omit<Coefficients, 'weights' | 'nodes'>

/** What the stages make of a rate of one. */
function nodesOf({ stages, first, onLast, onBefore, onRate, onFirstRate }: Stepping): Float64Array {
  const nodes = new Float64Array(stages + 1)
  nodes[1] = first
  for (let j = 2; j <= stages; j++)
    nodes[j] = onLast[j] * nodes[j - 1] + onBefore[j] * nodes[j - 2] + onRate[j] + onFirstRate[j]
  nodes[stages] = 1
  return nodes
}

/** The recursion walked backwards: each stage hands what it counts for on to those it is made of. */
function weightsOf(stepping: Stepping): Float64Array {
  const { stages, first, onLast, onBefore, onRate, onFirstRate } = stepping
  const counts = new Float64Array(stages + 1)
  const weights = new Float64Array(stages)
  counts[stages] = 1
  for (let j = stages; j >= 2; j--) {
    counts[j - 1] += onLast[j] * counts[j]
    counts[j - 2] += onBefore[j] * counts[j]
    weights[j - 1] = onRate[j] * counts[j]
    weights[0] += onFirstRate[j] * counts[j]
  }
  weights[0] += first * counts[1]
  return weights
}

/** Stages that keep a step of `step` days stable when the fastest decay is `radius` per day. */
export const stagesFor = (step: number, radius: number): number => {
  const stages = 1 + Math.floor(Math.sqrt(1 + 1.54 * step * radius))
  return stages < 2 ? 2 : stages
}
