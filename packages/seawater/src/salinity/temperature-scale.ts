/**
 * Temperature on the scale of 1968, which formulas made before 1990 want.
 *
 * @param temperature °C (ITS-90)
 * @returns °C (IPTS-68); 0.006 K more at 25 °C
 * @source Saunders 1990, WOCE Newsletter 10 (from memory)
 * @check PSS-78 and EOS-80 rows of validation/seawater/seawater-checks.csv
 */
export function ipts68(temperature: number): number {
  return 1.00024 * temperature
}

/** °C (ITS-90) of a temperature on the scale of 1968. */
export function its90(temperatureOf1968: number): number {
  return temperatureOf1968 / 1.00024
}
