import { demandPressure, demandSalinity } from '../demands.ts'

/**
 * Temperature at which sea water begins to freeze.
 *
 * @param salinity practical (PSS-78), 4 to 40
 * @param pressure dbar above the atmosphere, 0 to 10000 here, 0 in a tank; the check values of the source end at 500
 * @returns °C; true to 0.004 K
 * @throws OutOfRange outside these; nothing is clipped
 * @source Millero 1978, in Fofonoff & Millard 1983, UNESCO Tech. Pap. Mar. Sci. 44, p. 28-30
 * @check freezing_point in validation/seawater/seawater-checks.csv; GSW t_freezing in validation/gsw
 * @example freezingPointMillero1978(35) // -1.92
 */
export function freezingPointMillero1978(salinity: number, pressure = 0): number {
  demandSalinity(salinity, 4, 40)
  demandPressure(pressure)
  return freezingCurveMillero1978(salinity) - 7.53e-4 * pressure
}

/** The curve at no pressure for any salinity: outside 4 to 40 it only says where other fits may begin. */
export function freezingCurveMillero1978(salinity: number): number {
  return salinity * (-0.0575 + 1.710523e-3 * Math.sqrt(salinity) - 2.154996e-4 * salinity)
}
