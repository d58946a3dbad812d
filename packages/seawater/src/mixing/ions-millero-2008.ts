import { densityEos80 } from '../density/density-eos80.ts'
import { absoluteSalinityMillero2008 } from '../salinity/absolute-salinity-millero-2008.ts'

/**
 * Mass fractions of sea salt of reference composition; together 1.
 *
 * Source: Millero et al. 2008, Deep-Sea Res. I 55:50-72, as in the TEOS-10 manual, table D.3. Carbonate ions,
 * boric acid and borate move with pH: for those use the carbonate system.
 */
const massFractions = {
  Na: 0.3065958,
  Mg: 0.0365055,
  Ca: 0.0117186,
  K: 0.0113495,
  Sr: 0.000226,
  Cl: 0.5503396,
  SO4: 0.0771319,
  HCO3: 0.0029805,
  Br: 0.0019134,
  CO3: 0.0004078,
  'B(OH)4': 0.0002259,
  F: 0.0000369,
  OH: 0.0000038,
  'B(OH)3': 0.0005527,
  CO2: 0.0000121,
} as const

export type Ion = keyof typeof massFractions

export const ions = Object.keys(massFractions) as readonly Ion[]

/**
 * An ion in sea water of reference composition. Salt mixes differ from it by a tenth and more.
 *
 * @param ion      such as 'Ca'
 * @param salinity practical (PSS-78), 0 to 42
 * @returns mg per kg of solution: calcium of S 35 is 412
 * @throws OutOfRange outside; nothing is clipped
 * @source Millero et al. 2008
 * @check ion_concentration in validation/seawater/seawater-checks.csv
 * @example ionByMassMillero2008('Ca', 35) // 412.1
 */
export function ionByMassMillero2008(ion: Ion, salinity: number): number {
  return 1000 * massFractions[ion] * absoluteSalinityMillero2008(salinity)
}

/**
 * The same per litre, as kits give it.
 *
 * @param temperature °C (ITS-90), -2 to 40
 * @returns mg per litre: calcium of S 35, 25 °C is 422
 * @throws OutOfRange outside; nothing is clipped
 * @source as above, times the EOS-80 density
 * @check ion_concentration rows SW150 and SW151
 */
export function ionByVolumeMillero2008(ion: Ion, salinity: number, temperature: number): number {
  return ionByMassMillero2008(ion, salinity) * densityEos80(salinity, temperature)
}
