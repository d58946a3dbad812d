/**
 * Which part of the project a quantity rests on that is not built. A statement that rests on one is
 * skipped under its name: neither passed nor failed.
 */
import type { Check } from './case-file.ts'

export const missingParts = ['ladder'] as const

/** 'model' stands for the model itself where it cannot be asked. */
export type Part = (typeof missingParts)[number] | 'model'

/** Quantities that belong to one missing part, whatever the system. */
const wholly: Readonly<Record<string, Part>> = {
  measure_first: 'ladder',
  measure_not: 'ladder',
  caution_shown: 'ladder',
}

/** The missing part that this check of this case rests on, or undefined where all it needs is there. */
export function missingPart(check: Check): Part | undefined {
  return wholly[check.quantity]
}
