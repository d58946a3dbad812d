/**
 * Density of sea water at one atmosphere, kg/m³.
 *
 * @param salinity     practical (PSS-78), 0 to 42
 * @param temperature  °C (ITS-90), -2 to 40; the equation itself wants IPTS-68
 * @source Millero & Poisson 1981, Deep-Sea Res. 28A:625; UNESCO 1981 (EOS-80). Last coefficient of pure
 *   water ...332 as in UNESCO; some abstracts print ...336.
 */
function densityMilleroPoisson1981(salinity: number, temperature: number): number {
  const t = 1.00024 * temperature
  const pure =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))))
  const a = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)))
  const b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6)
  return pure + salinity * (a + b * Math.sqrt(salinity) + 4.8314e-4 * salinity)
}

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
  const target = specificGravity * densityMilleroPoisson1981(0, water)
  let [low, high] = [0, 42]
  if (densityMilleroPoisson1981(low, sample) > target) return undefined
  if (densityMilleroPoisson1981(high, sample) < target) return undefined
  // Density rises with salinity all the way, so halving always closes in.
  while (high - low > 1e-9) {
    const middle = (low + high) / 2
    if (densityMilleroPoisson1981(middle, sample) < target) low = middle
    else high = middle
  }
  return (low + high) / 2
}
