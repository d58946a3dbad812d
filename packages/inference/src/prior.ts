import { exp, ln } from '@holdfast/elementary'
import type { Fact, Range } from '@holdfast/facts'
import { normalQuantile } from './normal-quantile.ts'

/** Distance of the 5 and 95 % ends from the median, in spreads. */
const ends = 1.6448536269514722
/** Probability of exactly zero where low is zero and the fact does not say. */
const usualZeroShare = 0.2

/**
 * The value of a fact at a probability: its prior. Two halves of a lognormal with the median at
 * typical and 5 and 95 % at low and high; logit for shares; where low is 0, a share at exactly zero
 * and a lognormal above; normal where the value may be negative; a constant where the ends are equal.
 */
export function priorQuantile(
  fact: Range & Partial<Pick<Fact, 'unit' | 'zeroShare' | 'signed'>>,
  p: number,
): number {
  const { low, typical, high } = fact
  if (low === high) return typical
  if (fact.signed) {
    const z = normalQuantile(p) / ends
    return typical + (z < 0 ? z * (typical - low) : z * (high - typical))
  }
  if (low === 0) return aboveZero(fact, p)
  const z = normalQuantile(p) / ends
  if (isShare(fact)) {
    const middle = logit(typical)
    const value = middle + (z < 0 ? z * (middle - logit(low)) : z * (logit(high) - middle))
    return 1 / (1 + exp(-value))
  }
  return atMost(fact, typical * exp(z < 0 ? z * ln(typical / low) : z * ln(high / typical)))
}

function aboveZero(fact: Range & Partial<Pick<Fact, 'unit' | 'zeroShare'>>, p: number): number {
  const zero = fact.typical === 0 ? 0.5 : (fact.zeroShare ?? usualZeroShare)
  if (p <= zero) return 0
  const above = (p - zero) / (1 - zero)
  const middle = fact.typical > 0 ? fact.typical : fact.high / 4
  return atMost(fact, middle * exp((normalQuantile(above) / ends) * ln(fact.high / middle)))
}

const isShare = (fact: Range & { readonly unit?: string }): boolean => fact.unit === '1' && fact.high < 1

/** A number without a unit whose high end is 1 at most is a share, and no draw of it may pass 1. */
const atMost = (fact: Range & { readonly unit?: string }, value: number): number =>
  fact.unit === '1' && fact.high <= 1 ? Math.min(1, value) : value

const logit = (share: number): number => ln(share / (1 - share))
