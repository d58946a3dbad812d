/**
 * What goes with salinity, mol per kg of solution, by chlorinity = S / 1.80655. Water of a tank can differ:
 * measured calcium and boron are taken in their place where they are known.
 *
 * Source: Dickson, Sabine & Christian 2007, Guide to best practices for ocean CO2 measurements, chapter 5, after
 * the authors named at each (they from memory).
 */
function chlorinity(salinity: number): number {
  return salinity / 1.80655
}

/** Uppström 1974, Deep-Sea Res. 21:161: 415.7 µmol/kg at S 35. Lee et al. 2010 have 432.6. */
export function totalBoron(salinity: number): number {
  return (0.000232 / 10.811) * chlorinity(salinity)
}

/** Morris & Riley 1966, Deep-Sea Res. 13:699: 28.24 mmol/kg at S 35. */
export function totalSulfate(salinity: number): number {
  return (0.14 / 96.062) * chlorinity(salinity)
}

/** Riley 1965, Deep-Sea Res. 12:219: 68.3 µmol/kg at S 35. */
export function totalFluoride(salinity: number): number {
  return (0.000067 / 18.998) * chlorinity(salinity)
}

/** Riley & Tongudai 1967, Chem. Geol. 2:263: 10.28 mmol/kg at S 35. */
export function calcium(salinity: number): number {
  return (0.02128 / 40.087) * chlorinity(salinity)
}
