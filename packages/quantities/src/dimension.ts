/**
 * Base dimensions. Amounts of substance, of photons and of charge (alkalinity) are kept apart, since a mole
 * of one is never a mole of the other; practical salinity is one too, so that it cannot pass for a share.
 */
export const baseDimensions = [
  'length',
  'time',
  'mass',
  'amount',
  'photons',
  'charge',
  'temperature',
  'salinity',
] as const

export type BaseDimension = (typeof baseDimensions)[number]

/** Exponent of each base dimension; one that is absent is 0. */
export type Dimension = Readonly<Partial<Record<BaseDimension, number>>>

/** Exponents may come from formulas with broken powers, such as body mass to the 0.75. */
const SAME_EXPONENT = 1e-9

/** a × b^power. */
export function combineDimensions(a: Dimension, b: Dimension, power: number): Dimension {
  const combined: Partial<Record<BaseDimension, number>> = {}
  for (const base of baseDimensions) {
    const exponent = (a[base] ?? 0) + power * (b[base] ?? 0)
    if (Math.abs(exponent) > SAME_EXPONENT) combined[base] = exponent
  }
  return combined
}

export function equalDimensions(a: Dimension, b: Dimension): boolean {
  return baseDimensions.every((base) => Math.abs((a[base] ?? 0) - (b[base] ?? 0)) <= SAME_EXPONENT)
}
