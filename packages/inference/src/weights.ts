import { relative } from './kit.ts'

export interface Weights {
  readonly of: readonly number[]
  /** 1 / sum of squares: how many members of equal weight these are worth. */
  readonly effective: number
  /** Power to which the likelihood was taken; 1 is all of it. */
  readonly tempering: number
}

/** Share of the members that must go on counting. */
const leastEffective = 0.2
/** Powers tried, from all of the likelihood downwards. */
const powers = Array.from({ length: 51 }, (_, step) => 1 - step / 50)

/**
 * Weighs members by how well they explain the readings. Where few would be left, the readings count
 * for less (one power for all) until a fifth of the members still count; the page says so.
 */
export function weigh(logLikelihoods: readonly number[]): Weights {
  const at = (tempering: number): Weights => {
    const shares = relative(logLikelihoods.map((log) => tempering * log))
    return { ...inAll(shares), tempering }
  }
  const wanted = leastEffective * logLikelihoods.length
  for (const power of powers) {
    const weights = at(power)
    if (weights.effective >= wanted) return weights
  }
  return at(0)
}

/** The weights of the first members among themselves; all alike where none of these counts. */
export function weightsOfFirst({ of, tempering }: Weights, count: number): Weights {
  const first = of.slice(0, count)
  return { ...inAll(first.some((weight) => weight > 0) ? first : first.map(() => 1)), tempering }
}

function inAll(shares: readonly number[]): Omit<Weights, 'tempering'> {
  const sum = shares.reduce((total, share) => total + share, 0)
  const of = shares.map((share) => share / sum)
  return { of, effective: 1 / of.reduce((total, weight) => total + weight * weight, 0) }
}
