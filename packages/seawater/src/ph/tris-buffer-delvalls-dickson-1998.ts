import { ln } from '@holdfast/elementary'
import { demandSalinity, demandTemperature } from '../demands.ts'
import { type PH, pH } from './ph.ts'

/**
 * What an equimolal tris buffer in artificial sea water reads.
 *
 * @param salinity    practical (PSS-78), 20 to 40
 * @param temperature °C (ITS-90), 0 to 45
 * @returns pH on the total scale
 * @throws OutOfRange outside these; nothing is clipped
 * @source DelValls & Dickson 1998, Deep-Sea Res. I 45:1541-1554, eq. 18 (number from memory)
 * @check pH_tris_buffer in validation/seawater/seawater-checks.csv
 * @example trisBufferPHDelVallsDickson1998(35, 25).value // 8.094
 */
export function trisBufferPHDelVallsDickson1998(salinity: number, temperature: number): PH<'total'> {
  demandSalinity(salinity, 20, 40)
  demandTemperature(temperature, 0, 45)
  const s = salinity
  const t = temperature + 273.15
  return pH(
    'total',
    (11911.08 - s * (18.2499 + 0.039336 * s)) / t -
      366.27059 +
      s * (0.53993607 + 1.6329e-4 * s) +
      (64.52243 - 0.084041 * s) * ln(t) -
      0.11149858 * t,
  )
}
