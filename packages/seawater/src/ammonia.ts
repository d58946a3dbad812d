import { exp, ln } from '@holdfast/elementary'
import { demand } from './out-of-range.ts'
import { freeAboveTotalScale } from './ph-scales.ts'

const LN10 = Math.LN10

/**
 * pK of ammonium in sea water on the total scale, mol per kg of solution.
 *
 * @param salinity     practical (PSS-78), 0 to 40
 * @param temperature  °C (ITS-90), -2 to 40
 * @returns pK; the authors give the constant as good to 5 %, 0.02 in pK
 * @throws OutOfRange outside these; nothing is clipped
 * @source Clegg & Whitfield 1995, Geochim. Cosmochim. Acta 59:2403-2421, eq. 18, with 1 - 0.001005 S kg of
 *   water in a kg of solution
 */
export function ammoniumPkCleggWhitfield1995(salinity: number, temperature: number): number {
  demand('salinity', salinity, { low: 0, high: 40, next: 'Give practical salinity, such as 35.' })
  demand('temperature', temperature, { low: -2, high: 40, next: 'Give °C, such as 25.' })
  const s = salinity
  const t = temperature + 273.15
  const rootT = Math.sqrt(t)
  const rootS = Math.sqrt(s)
  const perKgOfWater =
    9.244605 -
    2729.33 * (1 / 298.15 - 1 / t) +
    (0.04203362 - 11.24742 / t) * Math.sqrt(rootS) +
    (-13.6416 + 1.176949 * rootT - 0.02860785 * t + 545.4834 / t) * rootS +
    (-0.1462507 + 0.0090226468 * rootT - 0.0001471361 * t + 10.5425 / t) * s * rootS +
    (0.004669309 - 0.0001691742 * rootT - 0.5677934 / t) * s * s +
    (-2.354039e-5 + 0.009698623 / t) * s * s * rootS
  // Tables per kg of water (5.56 % at S 35, 25 °C, pH 8) read higher than these by this factor alone.
  return perKgOfWater - ln(1 - 0.001005 * s) / LN10
}

/**
 * Share of total ammonia that is NH3.
 *
 * @param pH           on the total scale, 6 to 10. A probe set with NBS buffers reads about 0.14 higher at
 *   S 35, 25 °C (0.03 either way by its junction): take that off first, or NH3 comes out a third too high
 * @param salinity     practical (PSS-78), 0 to 40
 * @param temperature  °C (ITS-90), -2 to 40
 * @returns 0 to 1; within some 5 % of itself where pH is exact
 * @throws OutOfRange outside these; nothing is clipped
 * @source Clegg & Whitfield 1995, as above
 */
export function unIonisedAmmoniaFraction(pH: number, salinity: number, temperature: number): number {
  demand('pH', pH, { low: 6, high: 10, next: 'Give pH of sea water, such as 8.1.' })
  const pK = ammoniumPkCleggWhitfield1995(salinity, temperature)
  return 1 / (1 + exp((pK - pH) * LN10))
}

/**
 * The same with pH on the free scale, which at S 35, 25 °C reads 0.108 above the total scale.
 *
 * @throws OutOfRange as above; nothing is clipped
 */
export function unIonisedAmmoniaFractionFreeScale(
  pHFree: number,
  salinity: number,
  temperature: number,
): number {
  const pHTotal = pHFree - freeAboveTotalScale(salinity, temperature)
  return unIonisedAmmoniaFraction(pHTotal, salinity, temperature)
}
