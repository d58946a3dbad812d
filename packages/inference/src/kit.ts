import type { Observation } from '@holdfast/ecosystem'
import { exp, ln } from '@holdfast/elementary'
import type { FactsOfSystem } from '@holdfast/facts'

const kitsOf = ['nitrate', 'phosphate', 'ammonia', 'nitrite'] as const

/** What readings are weighed by. */
export const factsOfReadings: readonly string[] = [
  ...kitsOf.flatMap((quantity) => [`kit.${quantity}.share_error`, `kit.${quantity}.step`]),
  'survey.cover.error',
  'outlook.model_error',
]

/** What a kit may be off by, in the unit of the reading: one spread. */
export function kitError(
  quantity: Observation['quantity'],
  value: number,
  { typical }: FactsOfSystem,
): number {
  if (quantity === 'cover') return typical('survey.cover.error')
  const share = typical(`kit.${quantity}.share_error`)
  const step = typical(`kit.${quantity}.step`)
  // A step of the scale rounds evenly within itself: its spread is the step over the root of twelve.
  return Math.sqrt(share * share * value * value + (step * step) / 12)
}

/** Degrees of freedom of the error: few, so that a slip of the pen does not decide. */
const freedom = 4

/**
 * Log-likelihood of a reading when the model says `expected`, up to a constant. A reading below
 * detection counts as the chance of reading nothing, and never as a value.
 */
export function logLikelihood(reading: Observation, expected: number, facts: FactsOfSystem): number {
  const z = (reading.value - expected) / readingError(reading, facts)
  return reading.belowDetection ? ln(probabilityBelow(z)) : -((freedom + 1) / 2) * ln(1 + (z * z) / freedom)
}

/**
 * One spread of what parts a reading from the model: the kit's error and what the equations leave out,
 * since a reading is never believed more than the model deserves. It is sized by the reading, so that a
 * member far off is told which way is nearer.
 */
export function readingError({ quantity, value }: Observation, facts: FactsOfSystem): number {
  const missing = facts.typical('outlook.model_error') * value
  const kit = kitError(quantity, value, facts)
  return Math.sqrt(kit * kit + missing * missing)
}

/** Chance that a variable of Student's distribution with four degrees of freedom lies below z. */
function probabilityBelow(z: number): number {
  const r = 1 + (z * z) / 4
  // Far out the closed form loses itself in rounding; there the tail falls as the fourth power.
  if (z < -30) return 3 / (z * z * z * z)
  return 0.5 + 0.375 * (z / Math.sqrt(r)) * (1 - (z * z) / r / 12)
}

/** Ends of the 90 % interval of what a reading says. */
export function readingInterval(
  reading: Observation,
  facts: FactsOfSystem,
): { readonly low: number; readonly high: number } {
  if (reading.belowDetection) return { low: 0, high: reading.value }
  const reach = 1.6448536269514722 * kitError(reading.quantity, reading.value, facts)
  const ceiling = reading.quantity === 'cover' ? 1 : Number.POSITIVE_INFINITY
  return { low: Math.max(0, reading.value - reach), high: Math.min(ceiling, reading.value + reach) }
}

/** Likelihoods relative to the largest. */
export const relative = (logs: readonly number[]): readonly number[] => {
  const top = Math.max(...logs)
  return logs.map((log) => exp(log - top))
}
