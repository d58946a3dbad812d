import { demandSalinity, demandTemperature } from '../demands.ts'

/**
 * pK of ammonium in sea water on the free scale. That the scale is the free one is our inference from the
 * numbers: moved there, Clegg & Whitfield 1995 lies within 0.02 of it.
 *
 * @param salinity     practical (PSS-78), 0 to 45; the range is ours, the source's is not at hand
 * @param temperature  °C (ITS-90), 0 to 40; likewise
 * @returns pK
 * @throws OutOfRange outside these; nothing is clipped
 * @source Bell et al. 2008, Environ. Chem. 5:258, corrigendum to 4:183, after the measurements of Khoo et al.
 *   1977. The expression of 1977 itself was misprinted
 * @check pK_ammonium in validation/seawater/seawater-checks.csv
 * @example ammoniumPkBell2008(35, 25) // 9.3609
 */
export function ammoniumPkBell2008(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 45)
  demandTemperature(temperature, 0, 40)
  return 10.0423 - 0.0315536 * temperature + 0.003071 * salinity
}
