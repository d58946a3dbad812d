/** The arguments that most formulas share: the words for each stand here once, the range at each formula. */
import { demand } from './out-of-range.ts'

/** @throws OutOfRange unless it is a practical salinity from `low` to `high` */
export function demandSalinity(salinity: number, low: number, high: number, where = 'salinity'): void {
  demand(where, salinity, { low, high, next: 'Give practical salinity, such as 35.' })
}

/** @throws OutOfRange unless it is °C (ITS-90) from `low` to `high` */
export function demandTemperature(
  temperature: number,
  low: number,
  high: number,
  where = 'temperature',
): void {
  demand(where, temperature, { low, high, next: 'Give °C, such as 25.' })
}

/** The deepest sea; PSS-78, EOS-80 and TEOS-10 all end there. @throws OutOfRange outside 0 to 10000 dbar */
export function demandPressure(pressure: number): void {
  demand('pressure', pressure, {
    low: 0,
    high: 10000,
    next: 'Give dbar above the atmosphere; in a tank that is 0.',
  })
}

/** @throws OutOfRange unless it is 0 L or more */
export function demandVolume(volume_L: number, where = 'volume'): void {
  demand(where, volume_L, { low: 0, high: Infinity, next: 'Give litres, 0 or more.' })
}
