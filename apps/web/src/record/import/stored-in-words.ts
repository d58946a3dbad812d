import { readQuantities, type SheetReading } from '@holdfast/logbook'
import { withMark } from '../../ways/decimal.ts'

/**
 * A reading of a sheet as it will be stored, in the unit in which the log keeps its quantity.
 *
 * @example '0.063 mg/L PO4' of a cell with 63 in a column of ppb
 */
export function storedInWords(reading: Omit<SheetReading, 'text'>): string {
  const { quantity, value, zeroAsWritten, interval, belowDetection, aboveRange, approximate } = reading
  const unit = quantity === 'pH' ? '' : ` ${readQuantities[quantity]}`
  if (value === null || zeroAsWritten) return 'nothing detected, the limit not known'
  if (interval !== undefined) return `${interval.map(figure).join(' to ')}${unit}`
  const sign = belowDetection ? 'under ' : aboveRange ? 'over ' : approximate ? 'about ' : ''
  return `${sign}${figure(value)}${unit}`
}

/** To five digits: more than a kit shows, and none of the last of binary numbers. */
const figure = (value: number): string => withMark(String(Number(value.toPrecision(5))))
