import { demandSalinity } from '../demands.ts'

/** g of salt in a kg of sea water of reference composition, for 1 of practical salinity. */
export const saltPerPracticalSalinity = 35.16504 / 35

/**
 * Absolute salinity of sea water of reference composition: S_R of TEOS-10. The anomaly by place that TEOS-10
 * adds belongs to oceans; water of a tank drifts in composition, so take 0.1 to 0.2 g/kg for the floor.
 *
 * @param salinity practical (PSS-78), 0 to 42
 * @returns g/kg
 * @throws OutOfRange outside; nothing is clipped
 * @source Millero et al. 2008, Deep-Sea Res. I 55:50-72, eq. 6.5 (number from memory)
 * @check absolute_salinity in validation/seawater/seawater-checks.csv; GSW SR_from_SP in validation/gsw
 * @example absoluteSalinityMillero2008(35) // 35.16504
 */
export function absoluteSalinityMillero2008(salinity: number): number {
  demandSalinity(salinity, 0, 42)
  return saltPerPracticalSalinity * salinity
}
