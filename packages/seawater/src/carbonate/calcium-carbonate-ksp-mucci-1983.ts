import { ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * log10 of the solubility product of aragonite, (mol per kg of solution)².
 *
 * @param salinity    practical (PSS-78), 5 to 44
 * @param temperature °C (ITS-90), 5 to 40
 * @throws OutOfRange outside these; nothing is clipped
 * @source Mucci 1983, Am. J. Sci. 283:780-799
 * @check log10_Ksp_aragonite in validation/seawater/seawater-checks.csv
 * @example log10AragoniteKspMucci1983(35, 25) // -6.1883
 */
export function log10AragoniteKspMucci1983(salinity: number, temperature: number): number {
  const { s, q, t, shared } = parts(salinity, temperature)
  return (
    -171.945 +
    shared +
    2903.293 / t +
    (-0.068393 + 0.0017276 * t + 88.135 / t) * q -
    0.10018 * s +
    0.0059415 * s * q
  )
}

/**
 * The same of calcite.
 *
 * @throws OutOfRange as above; nothing is clipped
 * @source as above
 * @check log10_Ksp_calcite in validation/seawater/seawater-checks.csv
 * @example log10CalciteKspMucci1983(35, 25) // -6.3693
 */
export function log10CalciteKspMucci1983(salinity: number, temperature: number): number {
  const { s, q, t, shared } = parts(salinity, temperature)
  return (
    -171.9065 +
    shared +
    2839.319 / t +
    (-0.77712 + 0.0028426 * t + 178.34 / t) * q -
    0.07711 * s +
    0.0041249 * s * q
  )
}

function parts(salinity: number, temperature: number) {
  demandSalinity(salinity, 5, 44)
  demandTemperature(temperature, 5, 40)
  const t = temperature + 273.15
  const shared = -0.077993 * t + 71.595 * (ln(t) / Math.LN10)
  return { s: salinity, q: Math.sqrt(salinity), t, shared }
}
