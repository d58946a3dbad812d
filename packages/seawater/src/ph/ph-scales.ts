import { exp, ln } from '@holdfast/elementary'
import { lnBisulfateKDickson1990 } from '../carbonate/bisulfate-k-dickson-1990.ts'
import { totalFluoride, totalSulfate } from '../carbonate/conservative-totals.ts'
import { lnFluorideCurvePerezFraga1987 } from '../carbonate/hydrogen-fluoride-k-perez-fraga-1987.ts'
import { demandSalinity, demandTemperature } from '../demands.ts'
import { type PH, type PHScale, pH } from './ph.ts'

/**
 * A pH on another scale.
 *
 * @param from        the pH and its scale
 * @param to          the scale wanted
 * @param salinity    practical (PSS-78): 0 to 45; for NBS 10 to 40
 * @param temperature °C (ITS-90): 0 to 45; for NBS 2 to 35
 * @returns the pH on that scale; to and from NBS 0.03 either way at best, by the junction of the electrode
 * @throws OutOfRange outside these; nothing is clipped
 * @source sums of the definitions in Dickson, Sabine & Christian 2007, Guide to best practices for ocean CO2
 *   measurements, chapter 2; NBS by Takahashi et al. 1982
 * @check pH_free and pH_nbs in validation/seawater/seawater-checks.csv
 * @example onScale(pH('total', 8.1), 'free', 35, 25).value // 8.208
 */
export function onScale<To extends PHScale>(from: PH, to: To, salinity: number, temperature: number): PH<To> {
  if (from.scale === to) return pH(to, from.value)
  const total = from.value - aboveTotal(from.scale, salinity, temperature)
  return pH(to, total + aboveTotal(to, salinity, temperature))
}

function aboveTotal(scale: PHScale, salinity: number, temperature: number): number {
  if (scale === 'total') return 0
  if (scale === 'free') return freeAboveTotalScale(salinity, temperature)
  if (scale === 'seawater') return seawaterAboveTotalScale(salinity, temperature)
  return nbsAboveTotalScaleTakahashi1982(salinity, temperature)
}

/**
 * How much higher pH reads on the free scale than on the total scale: log10(1 + S_T / K_S).
 *
 * @param salinity    practical (PSS-78), 0 to 45
 * @param temperature °C (ITS-90), 0 to 45
 * @throws OutOfRange outside these; nothing is clipped
 * @source the definition; K_S of Dickson 1990
 * @check pH_free in validation/seawater/seawater-checks.csv
 */
export function freeAboveTotalScale(salinity: number, temperature: number): number {
  return ln(boundToSulfate(salinity, temperature)) / Math.LN10
}

/**
 * How much higher pH reads on the seawater scale, which counts HF too; below 0.
 *
 * @throws OutOfRange as above; nothing is clipped
 * @source the definition; K_S of Dickson 1990, K_F of Perez & Fraga 1987
 * @check pH_nbs in validation/seawater/seawater-checks.csv
 */
export function seawaterAboveTotalScale(salinity: number, temperature: number): number {
  const sulfate = boundToSulfate(salinity, temperature)
  // The fit of K_F ends at 9 to 33 °C; fluoride moves the scale by 0.01, its error beyond by far less.
  const fluoride = totalFluoride(salinity) / exp(lnFluorideCurvePerezFraga1987(salinity, temperature))
  return ln(sulfate / (sulfate + fluoride)) / Math.LN10
}

/**
 * How much higher a probe set with NBS buffers reads than the total scale.
 *
 * @param salinity    practical (PSS-78), 10 to 40
 * @param temperature °C (ITS-90), 2 to 35
 * @returns the difference; 0.03 either way at best, by the liquid junction of the electrode
 * @throws OutOfRange outside these; nothing is clipped
 * @source Takahashi et al. 1982, GEOSECS Pacific Expedition vol. 3 (apparent activity coefficient f_H)
 * @check pH_nbs in validation/seawater/seawater-checks.csv
 */
export function nbsAboveTotalScaleTakahashi1982(salinity: number, temperature: number): number {
  demandSalinity(salinity, 10, 40)
  demandTemperature(temperature, 2, 35)
  const t = temperature + 273.15
  const activity = 1.2948 - 0.002036 * t + (4.607e-4 - 1.475e-6 * t) * salinity * salinity
  return seawaterAboveTotalScale(salinity, temperature) - ln(activity) / Math.LN10
}

/** 1 + S_T / K_S: all protons that the total scale counts over the free ones. */
function boundToSulfate(salinity: number, temperature: number): number {
  return 1 + totalSulfate(salinity) / exp(lnBisulfateKDickson1990(salinity, temperature))
}
