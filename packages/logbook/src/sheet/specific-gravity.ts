import type { ReferenceTemperatures } from '@holdfast/quantities'
import { OutOfRange, salinityFromSpecificGravity } from '@holdfast/seawater'

/**
 * Practical salinity of water of a specific gravity; 0.001 is 1.3 in salinity, and the same number
 * under two references is up to 4 apart, so without a reference there is no answer.
 *
 * @returns salinity, 0 to 42, or undefined where no such water has that specific gravity
 */
export function salinityOfSpecificGravity(
  specificGravity: number,
  reference: ReferenceTemperatures,
): number | undefined {
  const [numbers = '', degrees] = reference.split(' ')
  const [sample = 25, water = 25] = numbers
    .split('/')
    .map((figure) => (degrees === '°F' ? (Number(figure) - 32) / 1.8 : Number(figure)))
  return inRange(() => salinityFromSpecificGravity(specificGravity, sample, water))
}

/** What an equation gives, or undefined where it does not hold. */
export function inRange(reckon: () => number): number | undefined {
  try {
    return reckon()
  } catch (error) {
    if (error instanceof OutOfRange) return undefined
    throw error
  }
}
