import { molarMass } from './molar-masses.ts'

/** Between mg/L as the project keeps readings and µmol/L as the model reckons. */

/** µmol/L from mg/L as NO3. */
export function micromolarFromNitrate(mg_per_L_as_NO3: number): number {
  return (mg_per_L_as_NO3 * 1000) / molarMass('NO3')
}

/** mg/L as NO3 from µmol/L. */
export function nitrateFromMicromolar(umol_per_L: number): number {
  return (umol_per_L * molarMass('NO3')) / 1000
}

/** µmol/L from mg/L as NO2. */
export function micromolarFromNitrite(mg_per_L_as_NO2: number): number {
  return (mg_per_L_as_NO2 * 1000) / molarMass('NO2')
}

/** mg/L as NO2 from µmol/L. */
export function nitriteFromMicromolar(umol_per_L: number): number {
  return (umol_per_L * molarMass('NO2')) / 1000
}

/** µmol/L from mg/L of total ammonia as N. */
export function micromolarFromAmmonia(mg_per_L_as_N: number): number {
  return (mg_per_L_as_N * 1000) / molarMass('N')
}

/** mg/L of total ammonia as N from µmol/L. */
export function ammoniaFromMicromolar(umol_per_L: number): number {
  return (umol_per_L * molarMass('N')) / 1000
}

/** µmol/L from mg/L as PO4. */
export function micromolarFromPhosphate(mg_per_L_as_PO4: number): number {
  return (mg_per_L_as_PO4 * 1000) / molarMass('PO4')
}

/** mg/L as PO4 from µmol/L. */
export function phosphateFromMicromolar(umol_per_L: number): number {
  return (umol_per_L * molarMass('PO4')) / 1000
}
