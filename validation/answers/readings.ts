/** Readings of a case in the units of the ledger, whatever form they were written in. */
import { convert, type Substance } from '@holdfast/quantities'
import type { CaseFile, CaseReading } from '../case-file.ts'
import { CannotAnswer } from './answer.ts'

/** A reading's quantity and the ion or atom in which a case gives it unless it says otherwise. */
const usualForm: Readonly<Record<string, Substance>> = {
  nitrate: 'NO3',
  nitrite: 'NO2',
  phosphate: 'PO4',
  ammonia: 'TAN-N',
}

/** What people call a form, per quantity. */
const formNames: readonly (readonly [RegExp, string, Substance])[] = [
  [/^(no3-?n|n|nitrate-n|nitrate as n|as n)$/i, 'nitrate', 'NO3-N'],
  [/^(no3|nitrate|ion|as no3)$/i, 'nitrate', 'NO3'],
  [/^(no2-?n|n|nitrite-n|as n)$/i, 'nitrite', 'NO2-N'],
  [/^(no2|nitrite|ion|as no2)$/i, 'nitrite', 'NO2'],
  [/^(po4-?p|p|phosphate-p|phosphorus|as p)$/i, 'phosphate', 'PO4-P'],
  [/^(po4|phosphate|ion|as po4)$/i, 'phosphate', 'PO4'],
  [/^(total ammonia as n|tan-?n|tan|n|nh[34]-?n|ammonia-n|as n)$/i, 'ammonia', 'TAN-N'],
  [/^(nh4|ammonium|as nh4|total ammonia as nh4)$/i, 'ammonia', 'NH4'],
  [/^(nh3|ammonia|as nh3|total ammonia as nh3)$/i, 'ammonia', 'NH3'],
]

/** Which substance a form means for a quantity; undefined where it is not known. */
export function substanceOf(quantity: string, form: string | undefined): Substance | undefined {
  if (form === undefined) return undefined
  return formNames.find(([pattern, of]) => of === quantity && pattern.test(form.trim()))?.[2]
}

/** The quantity that a form by itself speaks of, where only one does. */
export function quantityOfForm(form: string): string | undefined {
  const found = formNames.filter(([pattern]) => pattern.test(form.trim())).map(([, quantity]) => quantity)
  return new Set(found).size === 1 ? found[0] : undefined
}

/** mg/L of the usual form. @throws CannotAnswer for a unit or form that is not known */
export function usualValue(reading: CaseReading): number {
  const usual = usualForm[reading.quantity]
  if (usual === undefined) return reading.value
  const form = reading.form === undefined ? usual : substanceOf(reading.quantity, reading.form)
  if (form === undefined) throw new CannotAnswer(`a form of ${reading.quantity} other than "${reading.form}"`)
  return inForm(reading.value, reading.unit ?? 'mg/L', form, 'mg/L', usual)
}

/**
 * A concentration in another unit and form.
 *
 * @throws CannotAnswer for a unit that is neither a mass nor an amount in a litre
 */
export function inForm(
  value: number,
  fromUnit: string,
  from: Substance,
  toUnit: string,
  to: Substance,
): number {
  return inUnit(value, unitOf(fromUnit, from), unitOf(toUnit, to))
}

/** 'mg/L' of NO3 is 'mg NO3/L'; kits write ppm and ppb for mg and µg in a litre. */
export function unitOf(unit: string, substance: Substance): string {
  const plain = unit
    .trim()
    .replace(/^ppm$/i, 'mg/L')
    .replace(/^ppb$/i, 'µg/L')
    .replace(/^([numµμ]?)M$/, '$1mol/L')
    .replace(/[_ ](per[_ ])?L$/i, '/L')
  return /g\/L$/.test(plain) ? plain.replace('/L', ` ${substance}/L`) : plain
}

export function inUnit(value: number, from: string, to: string): number {
  try {
    return convert(value, from, to)
  } catch (error) {
    throw new CannotAnswer(`units that convert: ${error instanceof Error ? error.message : String(error)}`)
  }
}

/** Readings of a quantity from the first day to `to` in order of date. */
export function readingsOf(
  file: CaseFile,
  quantity: string,
  from = file.start,
  to = file.asof,
): readonly CaseReading[] {
  return file.log.readings
    .filter((reading) => reading.quantity === quantity && reading.date >= from && reading.date <= to)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0))
}

/** The reading of `date`, or without one the last up to the day on which one looks. @throws CannotAnswer if none */
export function readingAt(file: CaseFile, quantity: string, date?: string): CaseReading {
  const found = readingsOf(file, quantity, file.start, date ?? file.asof)
    .filter((reading) => date === undefined || reading.date === date)
    .at(-1)
  if (found !== undefined) return found
  throw new CannotAnswer(`a reading of ${quantity}${date === undefined ? '' : ` on ${date}`}`)
}
