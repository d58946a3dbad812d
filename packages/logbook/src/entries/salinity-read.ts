import { convert, mapStated, type Reading, type Stated } from '@holdfast/quantities'
import { OutOfRange, practicalSalinityPss78, salinityFromSpecificGravity } from '@holdfast/seawater'

/**
 * Practical salinity of a reading of salinity, specific gravity or conductivity, on the scale that the
 * reading names; a limit stays a limit.
 *
 * @returns undefined where there is no such sea water
 */
export function salinityRead({ stated, canonical }: Reading): Stated | undefined {
  try {
    return mapStated(stated, salinityOn(canonical))
  } catch (error) {
    if (error instanceof OutOfRange) return undefined
    throw error
  }
}

/** The way from a scale such as 'SG 25/25 °C' or 'mS/cm at 25 °C' to practical salinity. */
function salinityOn(scale: string): (value: number) => number {
  const [, sample, water, degrees = 'C'] = /^SG ([\d.]+)\/([\d.]+) °([CF])$/.exec(scale) ?? []
  if (sample !== undefined && water !== undefined) {
    const celsius = (text: string): number => convert(Number(text), `°${degrees}`, '°C')
    return (value) => salinityFromSpecificGravity(value, celsius(sample), celsius(water))
  }
  const [, temperature] = /^mS\/cm at (-?[\d.]+) °C$/.exec(scale) ?? []
  if (temperature !== undefined) return (value) => practicalSalinityPss78(value, Number(temperature))
  return (value) => value
}
