import { uniform } from '../random.ts'
import type { Evaluate } from './morris.ts'

/** Shares of the variance of a result. */
export interface VarianceShares {
  /** By the input alone. */
  readonly first: number
  /** By the input and all that it does together with others. */
  readonly total: number
}

/**
 * Shares out the variance of results among inputs that are even over the unit cube and independent (Sobol 1993,
 * 2001). First shares by Saltelli et al. 2010, Comput Phys Commun 181:259, total ones by Jansen 1999, Comput
 * Phys Commun 117:35 (both as recalled, tested on functions with known shares).
 *
 * @param samples  each takes two runs more than there are inputs
 * @returns for each result the shares of each input; all zero where the result does not vary
 */
export function sobol(
  evaluate: Evaluate,
  inputs: number,
  samples: number,
  seed: number,
): readonly (readonly VarianceShares[])[] {
  const matrix = (name: string): readonly (readonly number[])[] =>
    Array.from({ length: samples }, (_, sample) =>
      Array.from({ length: inputs }, (_, input) => uniform(seed, sample, `${name} ${input}`)),
    )
  const a = matrix('a')
  const b = matrix('b')
  const mixed = Array.from({ length: inputs }, (_, input) =>
    a.map((point, sample) => point.with(input, b[sample][input])),
  )
  const results = evaluate([...a, ...b, ...mixed.flat()])
  const part = (which: number, from: number): readonly number[] =>
    results.slice(from * samples, (from + 1) * samples).map((one) => one[which])
  return results[0].map((_, which) => {
    const ofA = part(which, 0)
    const ofB = part(which, 1)
    const both = [...ofA, ...ofB]
    const middle = mean(both)
    const variance = mean(both.map((value) => (value - middle) * (value - middle)))
    return mixed.map((_, input) => {
      if (variance === 0) return { first: 0, total: 0 }
      const ofMixed = part(which, 2 + input)
      // Less the middle, which changes no share and takes most of the noise.
      const first = mean(ofB.map((value, n) => (value - middle) * (ofMixed[n] - ofA[n])))
      const total = mean(ofA.map((value, n) => (value - ofMixed[n]) * (value - ofMixed[n]))) / 2
      return { first: first / variance, total: total / variance }
    })
  })
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length
