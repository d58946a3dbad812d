import { exp } from '@holdfast/elementary'
import { demand } from '../out-of-range.ts'
import type { PH, PHScale } from '../ph/ph.ts'
import { onScale } from '../ph/ph-scales.ts'
import { ammoniumPkBell2008 } from './ammonium-pk-bell-2008.ts'
import { ammoniumPkCleggWhitfield1995 } from './ammonium-pk-clegg-whitfield-1995.ts'
import { ammoniumPkKhoo1977 } from './ammonium-pk-khoo-1977.ts'

interface PublishedPk {
  /** The scale that its pK is on; a pH on another would be off by a fifth to a third in NH3. */
  readonly scale: PHScale
  readonly pK: (salinity: number, temperature: number) => number
}

const published = {
  clegg_whitfield_1995: { scale: 'total', pK: ammoniumPkCleggWhitfield1995 },
  bell_2008: { scale: 'free', pK: ammoniumPkBell2008 },
  khoo_1977: { scale: 'free', pK: ammoniumPkKhoo1977 },
} as const satisfies Record<string, PublishedPk>

export type AmmoniumMethod = keyof typeof published

export const ammoniumMethods = Object.keys(published) as readonly AmmoniumMethod[]

/**
 * pK of ammonium by one of the published forms, on the scale asked for.
 *
 * @param scale       of the pH that it will be compared with
 * @param salinity    practical (PSS-78), within the range of the method
 * @param temperature °C (ITS-90), within the range of the method
 * @throws OutOfRange outside these; nothing is clipped
 * @source the file of the method; moved between scales as pH is
 * @check pK_ammonium in validation/seawater/seawater-checks.csv
 */
export function ammoniumPk(
  method: AmmoniumMethod,
  scale: PHScale,
  salinity: number,
  temperature: number,
): number {
  const form: PublishedPk = published[method]
  const onItsOwn = { scale: form.scale, value: form.pK(salinity, temperature) }
  return onScale(onItsOwn, scale, salinity, temperature).value
}

/**
 * Share of total ammonia that is NH3.
 *
 * @param pH          with its scale, 6 to 10; it is moved to the scale of the method
 * @param salinity    practical (PSS-78), 0 to 40
 * @param temperature °C (ITS-90), -2 to 40
 * @param method      Clegg & Whitfield 1995 unless another is asked for
 * @returns 0 to 1; within some 5 % of itself where pH is exact
 * @throws OutOfRange outside these; nothing is clipped
 * @source 1 / (1 + 10^(pK - pH))
 * @check unionised_ammonia_fraction in validation/seawater/seawater-checks.csv
 * @example unIonisedAmmoniaFraction(pH('total', 8), 35, 25) // 0.0537
 */
export function unIonisedAmmoniaFraction(
  pH: PH,
  salinity: number,
  temperature: number,
  method: AmmoniumMethod = 'clegg_whitfield_1995',
): number {
  demand('pH', pH.value, { low: 6, high: 10, next: 'Give pH of sea water, such as 8.1.' })
  const form: PublishedPk = published[method]
  const pK = form.pK(salinity, temperature)
  const { value } = onScale(pH, form.scale, salinity, temperature)
  return 1 / (1 + exp((pK - value) * Math.LN10))
}
