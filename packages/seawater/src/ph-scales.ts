import { exp, ln } from '@holdfast/elementary'
import { demand } from './out-of-range.ts'

/**
 * How much higher pH reads on the free scale than on the total scale: log10(1 + S_T / K_S).
 *
 * @param salinity     practical (PSS-78), above 0 to 45
 * @param temperature  °C (ITS-90), 0 to 45
 * @throws OutOfRange outside these; nothing is clipped
 * @source ln K_S: Dickson 1990, J. Chem. Thermodyn. 22:113-127, as in Dickson, Sabine & Christian 2007, Guide
 *   to best practices for ocean CO2 measurements, chapter 5; total sulfate 0.14/96.062 mol per kg and
 *   chlorinity: the same guide
 */
export function freeAboveTotalScale(salinity: number, temperature: number): number {
  demand('salinity', salinity, {
    low: 0,
    high: 45,
    aboveLow: true,
    next: 'Give practical salinity, such as 35.',
  })
  demand('temperature', temperature, { low: 0, high: 45, next: 'Give °C, such as 25.' })
  const t = temperature + 273.15
  const ionic = (19.924 * salinity) / (1000 - 1.005 * salinity)
  const rootIonic = Math.sqrt(ionic)
  const lnT = ln(t)
  const lnKs =
    -4276.1 / t +
    141.328 -
    23.093 * lnT +
    (-13856 / t + 324.57 - 47.986 * lnT) * rootIonic +
    (35474 / t - 771.54 + 114.723 * lnT) * ionic -
    (2698 / t) * ionic * rootIonic +
    (1776 / t) * ionic * ionic +
    ln(1 - 0.001005 * salinity)
  const sulfate = ((0.14 / 96.062) * salinity) / 1.80655
  return ln(1 + sulfate / exp(lnKs)) / Math.LN10
}
