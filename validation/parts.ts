/**
 * Which part of the project a quantity rests on that is not built. A statement that rests on one is
 * skipped under its name: neither passed nor failed.
 */
import type { Check } from './case-file.ts'

export const missingParts = ['commissioning'] as const

/** 'model' stands for the model itself where it cannot be asked. */
export type Part = (typeof missingParts)[number] | 'model'

/** Quantities that belong to one missing part, whatever the system. */
const wholly: Readonly<Record<string, Part>> = {
  cycle_order: 'commissioning',
  nitrite_peak_mg_L: 'commissioning',
  ready_date_days: 'commissioning',
  ready_now: 'commissioning',
  ready_requires: 'commissioning',
}

/** The missing part that this check of this case rests on, or undefined where all it needs is there. */
export function missingPart(check: Check): Part | undefined {
  return wholly[check.quantity]
}
