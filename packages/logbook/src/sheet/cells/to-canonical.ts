import {
  type Answer,
  type QuantityName,
  type Reading,
  type ReadingOptions,
  readFigure,
  readQuantity,
  referenceTemperatures,
  type Stated,
} from '@holdfast/quantities'
import { densityEos80, practicalSalinityPss78 } from '@holdfast/seawater'

import type { ReadQuantity } from '../../entries/reading.ts'
import { inRange, salinityOfSpecificGravity } from '../specific-gravity.ts'

/** Reads a text as a quantity, by quantities; pH has no unit and is a bare figure. */
export function readAs(quantity: ReadQuantity, text: string, options: ReadingOptions): Answer<Reading> {
  if (quantity !== 'pH') return readQuantity(quantity satisfies QuantityName, text, options)
  const { stated, wrong, rest } = readFigure(text.replace(/\s*pH$/i, ''), options)
  const issue = (code: 'not-a-number' | 'unknown-unit' | 'negative'): Answer<Reading> => ({
    ok: false,
    issues: [{ code, where: 'pH', got: text, accepted: ['8.1'], next: 'write-unit' }],
  })
  if (stated === undefined || wrong !== undefined) return issue('not-a-number')
  return rest === ''
    ? { ok: true, value: { text, stated, canonical: 'pH', unit: '' } }
    : issue('unknown-unit')
}

/** Density of sea water of salinity 35 at 25 °C, kg/L, for units by the kilogram. */
export const usualDensity = densityEos80(35, 25) / 1000

/**
 * The canonical value of a number of a reading: practical salinity out of a specific gravity or a
 * conductivity, else the number itself.
 *
 * @returns undefined where no sea water reads so
 */
export function canonicalOf({
  canonical,
}: Pick<Reading, 'canonical'>): (value: number) => number | undefined {
  const reference = referenceTemperatures.find((one) => canonical === `SG ${one}`)
  if (reference !== undefined) return (value) => salinityOfSpecificGravity(value, reference)
  const [, temperature] = /^mS\/cm at ([\d.]+) °C$/.exec(canonical) ?? []
  if (temperature !== undefined)
    return (value) => inRange(() => practicalSalinityPss78(value, Number(temperature)))
  return (value) => value
}

/** The number by which a statement is compared with others. */
export function middleOf(stated: Stated): number | null {
  switch (stated.is) {
    case 'exact':
    case 'about':
      return stated.value
    case 'below':
    case 'above':
      return stated.limit
    case 'between':
      return (stated.low + stated.high) / 2
    case 'not detected':
      return null
  }
}
