import type { ReadQuantity } from '../../entries/reading.ts'

/**
 * What a quantity can be in any sea water that holds life, in its canonical unit. Far wider than any
 * good tank: it tells a thousands mark from a decimal sign, a unit from another and a slip from a reading,
 * and judges no water. Estimates, set here.
 */
export const possible: Readonly<Record<ReadQuantity, readonly [number, number]>> = {
  nitrate: [0, 1000],
  nitrite: [0, 100],
  phosphate: [0, 50],
  ammonia: [0, 100],
  alkalinity: [0.2, 15],
  calcium: [50, 1500],
  magnesium: [100, 4000],
  salinity: [0, 80],
  temperature: [0, 45],
  pH: [5, 11],
}

export function isPossible(quantity: ReadQuantity, value: number | undefined): boolean {
  const [low, high] = possible[quantity]
  return value !== undefined && value >= low && value <= high
}
