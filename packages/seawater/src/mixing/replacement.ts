import { demandSalinity, demandVolume } from '../demands.ts'
import { densityEos80 } from '../density/density-eos80.ts'
import { OutOfRange } from '../out-of-range.ts'

/** Water in a tank, new water to put in, and the salinity wanted; practical (PSS-78), 0 to 42 each. */
export interface Replacement {
  readonly volume_L: number
  readonly salinity: number
  readonly newWater: number
  readonly target: number
  /** °C (ITS-90), -2 to 40, of both waters. */
  readonly temperature: number
}

/**
 * Litres to take out and to put in again as new water, so that the mix has the salinity wanted.
 *
 * @returns L at `temperature`, 0 to the volume of the tank
 * @throws OutOfRange where the new water cannot bring the tank there, or an argument lies outside
 * @source mass balance of salt, EOS-80 densities
 * @check replace_volume_for_salinity in validation/seawater/seawater-checks.csv
 * @example replacementVolume({ volume_L: 200, salinity: 37, newWater: 0, target: 35, temperature: 25 }) // 11.1
 */
export function replacementVolume(replacement: Replacement): number {
  const { volume_L, salinity, newWater, target, temperature } = replacement
  demandVolume(volume_L)
  demandSalinity(target, 0, 42, 'target salinity')
  const tooMuch = densityEos80(salinity, temperature) * (salinity - target)
  const perLitre = densityEos80(newWater, temperature) * (target - newWater)
  if (tooMuch === 0) return 0
  // Salt balance: rho (V - x)(S - target) = rho_new x (target - S_new), solved for x.
  const volume = (volume_L * tooMuch) / (tooMuch + perLitre)
  if (volume >= 0 && volume <= volume_L) return volume
  throw new OutOfRange({
    code: 'out-of-range',
    where: 'target salinity',
    got: target,
    accepted: `between ${newWater}, which the new water has, and ${salinity}`,
    next: 'Replacing water only moves salinity towards the new water. Take other water or another target.',
  })
}
