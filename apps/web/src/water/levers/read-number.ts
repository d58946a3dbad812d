import {
  type Answer,
  convert,
  type MeasureOptions,
  parseDuration,
  parseMass,
  parseVolume,
  words,
} from '@holdfast/quantities'
import { plain } from '../../figure/numbers.ts'
import { unitOf } from '../../ways/amounts.ts'
import { type HandleOfLever, type Measure, type Reach, upTo } from './lever.ts'

/** How a measure is kept, read and typed. */
interface Typed {
  readonly kept: string
  /** The unit that is shown, and that a bare number is taken to be in. */
  readonly unit: () => string
  /** The same unit as `parse` takes it. */
  readonly bare: () => string
  readonly parse: (text: string, options: MeasureOptions) => Answer<number>
}

const typed: Readonly<Record<Measure, Typed>> = {
  volume: { kept: 'L', unit: () => unitOf('volume'), bare: () => unitOf('volume'), parse: parseVolume },
  days: { kept: 'd', unit: () => 'days', bare: () => 'd', parse: parseDuration },
  mass: { kept: 'g', unit: () => 'g', bare: () => 'g', parse: parseMass },
}

export const shownUnit = (measure: Measure) => typed[measure].unit()

/** A setting as this keeper reads it, without its unit. */
export const shown = (measure: Measure, value: number) =>
  convert(value, typed[measure].kept, typed[measure].bare())

/** A number in the unit that is shown, as it is kept. */
export const keptOf = (measure: Measure, value: number) =>
  convert(value, typed[measure].bare(), typed[measure].kept)

export const inUnit = (measure: Measure, value: number) =>
  `${plain(shown(measure, value))} ${shownUnit(measure)}`

/** How far a handle reaches as it is shown, in round steps of the unit that is shown. */
export function shownReach(measure: Measure, { min, max, step }: Reach): Reach {
  const size = shown(measure, step)
  const round = size === step ? step : roundStep(size)
  return { min: upTo(shown(measure, min), round), max: upTo(shown(measure, max), round), step: round }
}

/** The nearest of 1, 2, 5 and their tens below it. */
function roundStep(size: number): number {
  const ten = 10 ** Math.floor(Math.log10(size))
  return ten * ([5, 2, 1].find((digit) => digit * ten <= size) ?? 1)
}

/** What was typed into a handle: '20', '5 US gal', '2 weeks'. Nothing is cut to fit. */
export function readNumber(
  { title, measure }: Pick<HandleOfLever, 'title' | 'measure'>,
  { min, max }: Pick<Reach, 'min' | 'max'>,
  text: string,
): { readonly value: number } | { readonly issue: string } {
  const { bare, parse } = typed[measure]
  // None at all is a setting of a lever, though no volume.
  if (min === 0 && /^\s*0+(?:[.,]0*)?\s*(?:L|g|US gal)?\s*$/i.test(text)) return { value: 0 }
  const read = parse(text, { where: title, unit: bare() })
  if (!read.ok) return { issue: read.issues ? read.issues.map(words).join(' ') : read.ask.question }
  if (read.value < min || read.value > max) {
    const reach = `${plain(shown(measure, min))} to ${inUnit(measure, max)}`
    return { issue: `${title}: ${text.trim()} is out of reach of this lever. Give ${reach}.` }
  }
  return { value: read.value }
}
