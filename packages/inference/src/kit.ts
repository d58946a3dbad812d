import type { Observation } from '@holdfast/ecosystem'
import { exp, ln } from '@holdfast/elementary'
import { fact } from '@holdfast/facts'
import { normalProbability } from './normal-quantile.ts'

/** What a kit may be off by, in the unit of the reading: one spread. */
export function kitError(quantity: Observation['quantity'], value: number): number {
  if (quantity === 'cover') return fact('survey.cover.error').typical
  const share = fact(`kit.${quantity}.share_error`).typical
  const step = fact(`kit.${quantity}.step`).typical
  // A step of the scale rounds evenly within itself: its spread is the step over the root of twelve.
  return Math.sqrt(share * share * value * value + (step * step) / 12)
}

/**
 * What the equations leave out, as share of the value: one number for all that no process covers, so
 * that a reading is never believed more than the model deserves (estimate of ours).
 */
const modelError = 0.1

/** Degrees of freedom of the error: few, so that a slip of the pen does not decide. */
const freedom = 4

/**
 * Log-likelihood of a reading when the model says `expected`, up to a constant. A reading below
 * detection counts as the chance of reading nothing, and never as a value.
 */
export function logLikelihood(reading: Observation, expected: number): number {
  const missing = modelError * expected
  const kit = kitError(reading.quantity, reading.belowDetection ? expected : reading.value)
  const spread = Math.sqrt(kit * kit + missing * missing)
  if (reading.belowDetection) {
    const chance = normalProbability((reading.value - expected) / spread)
    return ln(Math.max(chance, 1e-9))
  }
  const z = (reading.value - expected) / spread
  return -((freedom + 1) / 2) * ln(1 + (z * z) / freedom) - ln(spread)
}

/** Ends of the 90 % interval of what a reading says. */
export function readingInterval(reading: Observation): { readonly low: number; readonly high: number } {
  if (reading.belowDetection) return { low: 0, high: reading.value }
  const reach = 1.6448536269514722 * kitError(reading.quantity, reading.value)
  const ceiling = reading.quantity === 'cover' ? 1 : Number.POSITIVE_INFINITY
  return { low: Math.max(0, reading.value - reach), high: Math.min(ceiling, reading.value + reach) }
}

export const relative = (logs: readonly number[]): readonly number[] => {
  const top = Math.max(...logs)
  return logs.map((log) => exp(log - top))
}
