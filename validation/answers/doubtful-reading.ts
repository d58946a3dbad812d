/** The one reading of a log that a careful keeper would take again. */
import { dayNumber } from '../calendar.ts'
import type { CaseFile, CaseReading } from '../case-file.ts'
import { readingsOf, substanceOf, usualValue } from './readings.ts'

/** Nitrite from which on most nitrate kits read it as nitrate, mg/L NO2. Common practice. */
const interferingNitrite = 0.1
/** A reading this many times its neighbours' line, or as many times below, stands out. */
const outstanding = 2

/** @returns the most doubtful reading, or undefined where none stands out. @param of only this quantity */
export function doubtfulReading(file: CaseFile, of?: string): CaseReading | undefined {
  const quantities = [...new Set(file.log.readings.map(({ quantity }) => quantity))].filter(
    (quantity) => of === undefined || quantity === of,
  )
  const readings = quantities.flatMap((quantity) => readingsOf(file, quantity))
  return (
    readings.find(hasUnknownForm) ?? mostOutstanding(file, quantities) ?? readings.find(readsNitrite(file))
  )
}

/** @returns the reading of a quantity that lies farthest off its neighbours, or undefined where none stands out */
export const outstandingReading = (file: CaseFile, of: string): CaseReading | undefined =>
  mostOutstanding(file, [of])

function hasUnknownForm({ quantity, form, unit }: CaseReading): boolean {
  if (!['nitrate', 'nitrite', 'phosphate', 'ammonia'].includes(quantity)) return false
  return form === undefined || unit === undefined || substanceOf(quantity, form) === undefined
}

function readsNitrite(file: CaseFile): (reading: CaseReading) => boolean {
  const nitrite = readingsOf(file, 'nitrite').filter((reading) => usualValue(reading) > interferingNitrite)
  return (reading) => reading.quantity === 'nitrate' && nitrite.some(({ date }) => date === reading.date)
}

/** By how many times a reading lies off the line through its neighbours, after what was done is allowed for. */
function mostOutstanding(file: CaseFile, quantities: readonly string[]): CaseReading | undefined {
  const scored = quantities.flatMap((quantity) => {
    const readings = readingsOf(file, quantity).filter((reading) => reading.below_detection !== true)
    return readings.map((reading, at) => ({ reading, times: timesOff(file, readings, at) }))
  })
  const worst = scored.reduce<(typeof scored)[number] | undefined>(
    (found, one) => (found === undefined || one.times > found.times ? one : found),
    undefined,
  )
  return worst !== undefined && worst.times >= outstanding ? worst.reading : undefined
}

function timesOff(file: CaseFile, readings: readonly CaseReading[], at: number): number {
  const reading = readings[at]
  const left = readings[at - 1]
  const right = readings[at + 1]
  if (reading === undefined) return 1
  if (left === undefined || right === undefined) return timesOffAtTheEnd(file, readings, reading)
  const span = dayNumber(right.date) - dayNumber(left.date)
  const share = span === 0 ? 0.5 : (dayNumber(reading.date) - dayNumber(left.date)) / span
  const between = usualValue(left) ** (1 - share) * usualValue(right) ** share
  // A reading between its neighbours is a step, not a slip.
  const values = [usualValue(left), usualValue(right)]
  const value = usualValue(reading)
  if (value >= Math.min(...values) && value <= Math.max(...values)) return 1
  return ratio(reading, between)
}

/**
 * The first and the last have neighbours on one side: they must lie off the nearest two, so that one bad
 * neighbour does not accuse them.
 */
function timesOffAtTheEnd(file: CaseFile, readings: readonly CaseReading[], reading: CaseReading): number {
  const away = (other: CaseReading) => Math.abs(dayNumber(other.date) - dayNumber(reading.date))
  const nearest = readings
    .filter((other) => other !== reading)
    .sort((a, b) => away(a) - away(b))
    .slice(0, 2)
  if (nearest.length < 2) return 1
  const dates = [...nearest, reading].map(({ date }) => date).sort()
  if (somethingDone(file, dates[0] ?? reading.date, dates[2] ?? reading.date)) return 1
  return Math.min(...nearest.map((other) => ratio(reading, usualValue(other))))
}

function ratio(reading: CaseReading, other: number): number {
  const value = usualValue(reading)
  if (value <= 0 || other <= 0) return 1
  return Math.max(value / other, other / value)
}

function somethingDone({ log }: CaseFile, from: string, to: string): boolean {
  return log.events.some(
    ({ kind, date }) => kind !== 'note' && kind !== 'survey' && date >= from && date <= to,
  )
}
