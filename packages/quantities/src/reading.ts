import type { NumberStyle } from './number-text.ts'
import type { Stated } from './stated.ts'

/** What was typed, kept beside what it means: a limit, a span and a step stay what they are. */
export interface Reading {
  /** As it was typed. */
  readonly text: string
  /** In the unit `canonical`. */
  readonly stated: Stated
  readonly canonical: string
  /** Unit and form as typed, in our spelling. */
  readonly unit: string
  readonly form?: string
  /** Step of the chart or display that was read, in the unit `canonical`. */
  readonly step?: number
}

/** What the place of a text tells about it; the text comes first. */
export interface ReadingOptions extends NumberStyle {
  /** Name of the field, for the words of an issue. */
  readonly where?: string
  /** Unit where the text has none, such as that of the column. */
  readonly unit?: string
  /** Form where the text has none, such as 'NO3' or 'NO3-N'. */
  readonly form?: string
  /** Step of the chart or display, in the unit and form of the text. */
  readonly step?: number
  /** Density of the water, kg/L, for what counts by the kilogram. */
  readonly density?: number
  /** Hours of light in a day, between light at an instant and light over a day. */
  readonly hoursPerDay?: number
  /** Temperature of the water, °C, for a conductivity that names none. */
  readonly temperature?: number
  /** Sample and reference temperature, for a specific gravity that names none. */
  readonly reference?: string
}
