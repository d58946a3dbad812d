import { whereRises } from '../bisection.ts'
import { demandPressure, demandSalinity, demandTemperature } from '../demands.ts'
import { demand, OutOfRange } from '../out-of-range.ts'
import { ipts68 } from './temperature-scale.ts'

/** Conductivity of water of S 35 at 15 °C (IPTS-68) and no pressure, mS/cm. */
const conductivityOfStandard = 42.914

/**
 * Practical salinity of water of a conductivity.
 *
 * @param conductivity mS/cm at the temperature of the water itself, not referred to 25 °C by the meter
 * @param temperature  °C (ITS-90), -2 to 35
 * @param pressure     dbar above the atmosphere, 0 to 10000; 0 in a tank
 * @returns practical salinity, 2 to 42; the scale itself is true to 0.003
 * @throws OutOfRange where an argument or the salinity lies outside; nothing is clipped
 * @source PSS-78: Lewis 1980, IEEE J. Oceanic Eng. OE-5:3-8; Fofonoff & Millard 1983, UNESCO Tech. Pap. Mar.
 *   Sci. 44; conductivity of the standard 42.914 mS/cm: Culkin & Smith 1980 (from memory)
 * @check practical_salinity in validation/seawater/seawater-checks.csv; GSW SP_from_C in validation/gsw
 * @example practicalSalinityPss78(53.07, 25) // 35.0
 */
export function practicalSalinityPss78(conductivity: number, temperature: number, pressure = 0): number {
  demand('conductivity', conductivity, { low: 0, high: Infinity, next: 'Give mS/cm, such as 53.' })
  return practicalSalinityOfRatioPss78(conductivity / conductivityOfStandard, temperature, pressure)
}

/**
 * The same from the ratio to 42.914 mS/cm.
 *
 * @throws OutOfRange as above; nothing is clipped
 * @check practical_salinity rows SW001 to SW003 (UNESCO 1983)
 */
export function practicalSalinityOfRatioPss78(ratio: number, temperature: number, pressure = 0): number {
  demand('conductivity ratio', ratio, { low: 0, high: Infinity, next: 'Give a ratio to 42.914 mS/cm.' })
  demandTemperature(temperature, -2, 35)
  demandPressure(pressure)
  const salinity = salinityOfRatio(ratio, ipts68(temperature), pressure)
  // The last bits of the sum are no reason to refuse water of just 2 or 42.
  if (salinity >= 2 - 1e-9 && salinity <= 42 + 1e-9) return salinity
  throw new OutOfRange({
    code: 'out-of-range',
    where: 'salinity',
    got: salinity,
    accepted: '2 to 42, where the practical scale is defined',
    next: 'Check conductivity and temperature; mS/cm, not µS/cm, and as measured, not referred to 25 °C.',
  })
}

/**
 * Ratio of the conductivity to 42.914 mS/cm: PSS-78 the other way. There is no closed form; salinity rises
 * with conductivity, so it is found by halving.
 *
 * @param salinity     practical (PSS-78), 2 to 42
 * @param temperature  °C (ITS-90), -2 to 35
 * @param pressure     dbar above the atmosphere, 0 to 10000
 * @throws OutOfRange outside these; nothing is clipped
 * @source as above
 * @check conductivity_ratio in validation/seawater/seawater-checks.csv (UNESCO 1983, p. 9)
 */
export function conductivityRatioPss78(salinity: number, temperature: number, pressure = 0): number {
  demandSalinity(salinity, 2, 42)
  demandTemperature(temperature, -2, 35)
  demandPressure(pressure)
  const t = ipts68(temperature)
  return whereRises((ratio) => salinityOfRatio(ratio, t, pressure), salinity, {
    where: 'salinity',
    low: 0.01,
    high: 3,
    next: 'Give practical salinity, such as 35.',
  })
}

/** The same in mS/cm. @throws OutOfRange as above @check conductivity rows (GSW C_from_SP) */
export function conductivityPss78(salinity: number, temperature: number, pressure = 0): number {
  return conductivityOfStandard * conductivityRatioPss78(salinity, temperature, pressure)
}

/**
 * Conductivity that the same water has at 25 °C. Meters mostly apply a fixed 1.9 to 2.1 % a kelvin instead
 * and err by up to 0.5 in salinity.
 *
 * @param conductivity mS/cm at `temperature` and `pressure`
 * @returns mS/cm at 25 °C and the same pressure
 * @throws OutOfRange as above; nothing is clipped
 * @check conductivity_at_25C in validation/seawater/seawater-checks.csv
 */
export function conductivityAt25C(conductivity: number, temperature: number, pressure = 0): number {
  return conductivityPss78(practicalSalinityPss78(conductivity, temperature, pressure), 25, pressure)
}

/** Practical salinity of a ratio R at t °C (IPTS-68), p dbar, whatever comes out; UNESCO 44 p. 7. */
function salinityOfRatio(R: number, t: number, p: number): number {
  const Rp =
    1 +
    (p * (2.07e-5 + p * (-6.37e-10 + p * 3.989e-15))) /
      (1 + t * (3.426e-2 + t * 4.464e-4) + (4.215e-1 - 3.107e-3 * t) * R)
  const rt = 0.6766097 + t * (2.00564e-2 + t * (1.104259e-4 + t * (-6.9698e-7 + t * 1.0031e-9)))
  const r = Math.sqrt(R / (Rp * rt))
  const a = 0.008 + r * (-0.1692 + r * (25.3851 + r * (14.0941 + r * (-7.0261 + r * 2.7081))))
  const b = 0.0005 + r * (-0.0056 + r * (-0.0066 + r * (-0.0375 + r * (0.0636 + r * -0.0144))))
  return a + ((t - 15) / (1 + 0.0162 * (t - 15))) * b
}
