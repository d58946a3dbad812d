import { grouped } from '../ways/counts.ts'
import { ways } from '../ways/ways.ts'

/** A value with the ends of its 90 % interval, as it is written on a page. */
export interface Written {
  readonly value: string
  readonly low: string
  readonly high: string
}

/** Places by which a value may be told more finely than the far end of its interval. */
const finest = 3

/** Ends whose distances from the value differ by more than this are rounded each by its own. */
const skewed = 4

/**
 * No more digits than the interval bears: 4.123 (2.61 to 5.99) reads 4.1 (2.6 to 6.0), and the far end of
 * a skewed interval is told more coarsely than the near one: 9 (1 to 120). What is more than nothing and less than
 * the last digit reads "under" it.
 *
 * @param least  what is less is not worth telling apart: a power of ten
 */
export function written(value: number, low: number, high: number, least = 0): Written {
  const gaps = { low: value - low, high: high - value }
  const known = Object.values(gaps).filter((gap) => gap > 0)
  if (!hasSpread(value, low, high) || known.length === 0) {
    const alone = plain(value)
    return { value: alone, low: alone, high: alone }
  }
  const [near, far] = [Math.min(...known), Math.max(...known)]
  // Where the value lies all but on one end, the other end tells how well it is known.
  const smallestPlace = least > 0 ? magnitude(least) : Number.NEGATIVE_INFINITY
  const place = Math.max(placeFor(near), placeFor(far) - finest, smallestPlace)
  const put = (end: number, gap: number) => {
    const at = far / near > skewed && gap === far ? Math.max(placeFor(far), smallestPlace) : place
    // Of what cannot be below nothing a row of noughts says no more than one.
    return low >= 0 && isNought(end, at) ? '0' : rounded(end, at)
  }
  const isUnder = low >= 0 && value > 0 && isNought(value, place)
  return {
    value: isUnder ? `under ${rounded(10 ** place, place)}` : rounded(value, place),
    low: put(low, gaps.low),
    high: put(high, gaps.high),
  }
}

/** Whether all that is written of a value to this place is noughts. */
const isNought = (value: number, place: number) => Math.abs(value) < 10 ** place / 2

/** A sum over many days ends some parts in 10¹² beside itself; that is no spread. */
export const hasSpread = (value: number, low: number, high: number) =>
  high - low > 1e-6 * Math.max(Math.abs(value), smallest)

/** One number alone, to three digits: what was said or read, not computed. */
export const plain = (value: number) =>
  rounded(value, magnitude(Math.max(Math.abs(value), smallest)) - 2, true)

const smallest = 1e-9

/** Decimal place of the last digit worth writing: one digit of the gap, or two where the first is 1 or 2. */
function placeFor(gap: number): number {
  const size = Math.max(gap, smallest)
  const place = magnitude(size)
  return size / 10 ** place < 3 ? place - 1 : place
}

const magnitude = (size: number) => Math.floor(Math.log10(size))

function rounded(value: number, place: number, trim = false): string {
  const step = 10 ** place
  const snapped = place > 0 ? Math.round(value / step) * step : value
  const digits = Math.min(6, Math.max(0, -place))
  const fixed = Math.abs(snapped).toFixed(digits)
  const kept = trim && fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
  const [whole = '0', fraction] = kept.split('.')
  const sign = snapped < 0 && Number(kept) !== 0 ? '\u2212' : ''
  const mark = ways().decimal === 'comma' ? ',' : '.'
  return sign + (fraction ? `${grouped(whole)}${mark}${fraction}` : grouped(whole))
}
