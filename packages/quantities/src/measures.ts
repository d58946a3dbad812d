import type { Answer } from './issue.ts'
import { type Measure, parseMeasure } from './measure.ts'
import type {
  Centimetres,
  Days,
  DegreesCelsius,
  Grams,
  KilogramsPerLitre,
  Litres,
  LitresPerHour,
  SquareMetres,
  Watts,
} from './measured.ts'
import type { NumberStyle } from './number-text.ts'
import { parseUnit } from './parse-unit.ts'

export interface MeasureOptions extends NumberStyle {
  /** Name of the field, for the words of an issue. */
  readonly where?: string
  /** The unit where the text has none, such as that of the column. */
  readonly unit?: string
}

export const volume: Measure = {
  where: 'Volume',
  next: 'give-volume',
  canonical: 'L',
  accepted: ['L', 'mL', 'm³', 'US gal', 'imp gal', 'US fl oz', 'imp fl oz'],
  lowest: 'above 0',
}
export const mass: Measure = {
  where: 'Mass',
  next: 'give-mass',
  canonical: 'g',
  accepted: ['g', 'mg', 'kg', 'oz', 'lb'],
  lowest: '0',
}
export const area: Measure = {
  where: 'Area',
  next: 'give-area',
  canonical: 'm²',
  accepted: ['m²', 'cm²', 'ft²', 'in²'],
  lowest: 'above 0',
}
export const length: Measure = {
  where: 'Length',
  next: 'give-length',
  canonical: 'cm',
  accepted: ['cm', 'mm', 'm', 'in', 'ft'],
  lowest: 'above 0',
}
export const temperature: Measure = {
  where: 'Temperature',
  next: 'give-temperature',
  canonical: '°C',
  accepted: ['°C', '°F'],
  lowest: 'any',
}
export const duration: Measure = {
  where: 'Duration',
  next: 'give-duration',
  canonical: 'd',
  accepted: ['min', 'h', 'd', 'week'],
  lowest: '0',
}
export const flow: Measure = {
  where: 'Flow',
  next: 'give-flow',
  canonical: 'L/h',
  accepted: ['L/h', 'L/min', 'm³/h', 'US gph', 'imp gph'],
  lowest: '0',
}
export const power: Measure = {
  where: 'Power',
  next: 'give-power',
  canonical: 'W',
  accepted: ['W', 'kW', 'mW'],
  lowest: '0',
  // 'mw' is a thousandth of a watt and 'MW' a million: of the table's names only 'W' itself has capitals
  unitNamed: (written) =>
    /^(?:w|watts?)$/i.test(written) ? parseUnit('W') : /^kw$/i.test(written) ? parseUnit('kW') : undefined,
}
export const density: Measure = {
  where: 'Density',
  next: 'give-density',
  canonical: 'kg/L',
  accepted: ['kg/L', 'g/cm³', 'kg/m³'],
  lowest: 'above 0',
}

/**
 * One number above 0.
 *
 * @example parseVolume('16 US gal') // 60.567 L
 * @example parseVolume('16 gal') // asks which gallon
 */
export function parseVolume(text: string, options?: MeasureOptions): Answer<Litres> {
  return parseMeasure(volume, text, options)
}

/** One number not below 0. @example parseMass('2 oz') // 56.699 g */
export function parseMass(text: string, options?: MeasureOptions): Answer<Grams> {
  return parseMeasure(mass, text, options)
}

/** One number above 0. @example parseArea('120 in2') // 0.0774 m² */
export function parseArea(text: string, options?: MeasureOptions): Answer<SquareMetres> {
  return parseMeasure(area, text, options)
}

/** One number above 0. @example parseLength('36 in') // 91.44 cm */
export function parseLength(text: string, options?: MeasureOptions): Answer<Centimetres> {
  return parseMeasure(length, text, options)
}

/** One number. @example parseTemperature('78F') // 25.56 °C */
export function parseTemperature(text: string, options?: MeasureOptions): Answer<DegreesCelsius> {
  return parseMeasure(temperature, text, options)
}

/** One number not below 0. @example parseDuration('36 h') // 1.5 d */
export function parseDuration(text: string, options?: MeasureOptions): Answer<Days> {
  return parseMeasure(duration, text, options)
}

/** One number not below 0. @example parseFlow('200 US gph') // 757.08 L/h */
export function parseFlow(text: string, options?: MeasureOptions): Answer<LitresPerHour> {
  return parseMeasure(flow, text, options)
}

/** One number not below 0. @example parsePower('0,5 kW') // 500 W */
export function parsePower(text: string, options?: MeasureOptions): Answer<Watts> {
  return parseMeasure(power, text, options)
}

/** One number above 0. @example parseDensity('1023.3 kg/m3') // 1.0233 kg/L */
export function parseDensity(text: string, options?: MeasureOptions): Answer<KilogramsPerLitre> {
  return parseMeasure(density, text, options)
}
