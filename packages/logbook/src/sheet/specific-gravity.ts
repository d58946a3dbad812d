import { OutOfRange, salinityFromSpecificGravity } from '@holdfast/seawater'

/** Reference temperatures that instruments carry: of the sample, and of the pure water compared with, °C. */
export const specificGravityReferences = {
  '25/25': [25, 25],
  '20/20': [20, 20],
  '15.6/15.6 (60 °F)': [15.5556, 15.5556],
  '20/4': [20, 4],
  '25/4': [25, 4],
} as const satisfies Record<string, readonly [number, number]>

export type SpecificGravityReference = keyof typeof specificGravityReferences

/**
 * Practical salinity of water of a specific gravity; 0.001 is 1.3 in salinity, and the same number
 * under two references is up to 4 apart, so without a reference there is no answer.
 *
 * @returns salinity, 0 to 42, or undefined where no such water has that specific gravity
 */
export function salinityOfSpecificGravity(
  specificGravity: number,
  reference: SpecificGravityReference,
): number | undefined {
  const [sample, water] = specificGravityReferences[reference]
  try {
    return salinityFromSpecificGravity(specificGravity, sample, water)
  } catch (error) {
    if (error instanceof OutOfRange) return undefined
    throw error
  }
}
