import { demandSalinity, demandTemperature } from '../demands.ts'
import { pureWaterAmmoniumPkCleggWhitfield1995 } from './ammonium-pk-clegg-whitfield-1995.ts'

/**
 * pK of ammonium in sea water on the free scale (our inference, as for Bell et al. 2008): the pK in pure water
 * and what ionic strength adds.
 *
 * @param salinity     practical (PSS-78), 0 to 45; the range is ours, the source's is not at hand
 * @param temperature  °C (ITS-90), 5 to 40
 * @returns pK
 * @throws OutOfRange outside these; nothing is clipped
 * @source Khoo et al. 1977, J. Solution Chem. 6:281-290, abstract: plus (0.1552 - 0.0003142 t) I. The printed
 *   form for the pK in pure water has an error (Bell et al. 2007), so that of Clegg & Whitfield 1995 stands here
 * @check 9.245 + 0.107 = 9.352 at S 35, 25 °C, by the same abstract, to 0.001; un-ionised-ammonia.test.ts
 * @example ammoniumPkKhoo1977(35, 25) // 9.351
 */
export function ammoniumPkKhoo1977(salinity: number, temperature: number): number {
  demandSalinity(salinity, 0, 45)
  demandTemperature(temperature, 5, 40)
  const ionicStrength = (19.9273 * salinity) / (1000 - 1.005109 * salinity)
  return (
    pureWaterAmmoniumPkCleggWhitfield1995(temperature) + (0.1552 - 0.0003142 * temperature) * ionicStrength
  )
}
