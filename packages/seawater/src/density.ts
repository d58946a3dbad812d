import { demand } from './out-of-range.ts'

/**
 * Density of sea water at one atmosphere.
 *
 * @param salinity     practical (PSS-78), 0 to 42
 * @param temperature  °C (ITS-90), -2 to 40
 * @returns kg L⁻¹; standard error of the equation 3.6e-6 kg L⁻¹
 * @throws OutOfRange outside these; nothing is clipped
 * @source EOS-80: Millero & Poisson 1981, Deep-Sea Res. 28A:625-629
 */
export function densityEos80(salinity: number, temperature: number): number {
  demand('salinity', salinity, { low: 0, high: 42, next: 'Give practical salinity, such as 35.' })
  demand('temperature', temperature, { low: -2, high: 40, next: 'Give °C, such as 25.' })
  // The equation is of 1981 and wants the temperature scale of 1968.
  const t = 1.00024 * temperature
  const s = salinity
  const fresh =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))))
  const linear = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)))
  const root = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6)
  return (fresh + s * linear + s * Math.sqrt(s) * root + s * s * 4.8314e-4) / 1000
}
