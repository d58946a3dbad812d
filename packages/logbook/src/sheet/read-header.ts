import type { ReadQuantity } from '../entries/reading.ts'
import { plain } from './read-number.ts'
import type { ColumnRole } from './sheet.ts'
import { formOfWord, quantityOfWord, roleOfWord, unitOfWord } from './vocabulary.ts'

/** What a header says of its column. */
export interface Header {
  readonly role: ColumnRole
  /** One of the units of the vocabulary. */
  readonly unit?: string
  readonly unitAsWritten?: string
  readonly form?: string
  /** True where salinity is read as specific gravity. */
  readonly gravity?: true
  /** The two temperatures of a specific gravity, such as 25/25, as written. */
  readonly temperatures?: string
}

/**
 * Understands a header such as "Nitrat NO3 (mg/l)": the first word that names a quantity decides, the
 * others give unit and form. A form with nitrogen or phosphorus wins over the ion, since "NO3-N" names
 * both.
 */
export function readHeader(text: string): Header {
  const written = text.split(/[\s()[\],:;=]+/).filter((word) => word !== '')
  const words = written.map(plain)
  const named = words.findIndex((word) => quantityOfWord.has(word))
  if (named < 0) {
    const role = words.map((word) => roleOfWord.get(word)).find((one) => one !== undefined)
    return { role: role ?? 'unknown' }
  }
  const quantity = quantityOfWord.get(words[named])
  // Words such as "C" and "P" are units and forms beside a quantity, never before one.
  const unitAt = words.findIndex((word) => unitOfWord.has(word))
  const unit = unitOfWord.get(words[unitAt])
  const units = { ...(unit !== undefined && { unit, unitAsWritten: written[unitAt] }) }
  if (quantity === 'specific gravity') {
    const temperatures = words.find((word) => /^\d+(\.\d+)?\s?°?[cf]?\/\d+/.test(word))
    return { role: 'salinity', gravity: true, unitAsWritten: 'SG', ...(temperatures && { temperatures }) }
  }
  const form = formAmong(words, quantity as ReadQuantity)
  return { role: quantity as ReadQuantity, ...units, ...(form !== undefined && { form }) }
}

const formsOf: Readonly<Partial<Record<ReadQuantity, readonly string[]>>> = {
  nitrate: ['N', 'NO3'],
  nitrite: ['N', 'NO2'],
  ammonia: ['N', 'NH3', 'NH4'],
  phosphate: ['P', 'PO4'],
  alkalinity: ['CaCO3'],
  calcium: ['CaCO3'],
}

function formAmong(words: readonly string[], quantity: ReadQuantity): string | undefined {
  const forms = new Set(words.map((word) => formOfWord.get(word)))
  return formsOf[quantity]?.find((form) => forms.has(form))
}
