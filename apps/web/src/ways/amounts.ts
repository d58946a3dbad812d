import { convert } from '@holdfast/quantities'
import { plain } from '../figure/numbers.ts'
import { ways } from './ways.ts'

/** What is kept in the first unit, and the unit in which keepers of each way read it. */
const units = {
  volume: { kept: 'L', metric: 'L', US: 'US gal' },
  length: { kept: 'cm', metric: 'cm', US: 'in' },
  area: { kept: 'm²', metric: 'm²', US: 'ft²' },
  mass: { kept: 'kg', metric: 'kg', US: 'lb' },
  temperature: { kept: '°C', metric: '°C', US: '°F' },
  flow: { kept: 'L/h', metric: 'L/h', US: 'US gph' },
  volumeADay: { kept: 'L/d', metric: 'L/d', US: 'US gal/d' },
} as const

export type Amount = keyof typeof units

/** The unit in which this keeper reads an amount. */
export const unitOf = (of: Amount): string => units[of][ways().units]

/**
 * An amount as this keeper reads it.
 *
 * @param kept  litres, centimetres, square metres, kilograms, °C, litres an hour or a day
 * @example amount('volume', 600) // '600 L', or '159 US gal'
 */
export function amount(of: Amount, kept: number): string {
  const unit = unitOf(of)
  return `${plain(convert(kept, units[of].kept, unit))} ${unit}`
}

/** The same to two digits, for what is told as "some". @example roughly('volume', 300) // '300 L', or '79 US gal' */
export function roughly(of: Amount, kept: number): string {
  const unit = unitOf(of)
  return `${plain(Number(convert(kept, units[of].kept, unit).toPrecision(2)))} ${unit}`
}
