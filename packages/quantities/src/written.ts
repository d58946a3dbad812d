/** A figure with the ends of its interval. */
export interface Banded {
  readonly value: number
  readonly low: number
  readonly high: number
  /** What is less is not worth telling apart: a power of ten. */
  readonly least?: number
}

/** The three as they are written. */
export interface Written {
  readonly value: string
  readonly low: string
  readonly high: string
}

/** The signs of those who read it. */
export interface FigureSigns {
  readonly decimal: '.' | ','
  readonly minus: string
  /** What stands between thousands from five digits on; empty: nothing. */
  readonly thousands: string
}

/** Places by which a value may be told more finely than the far end of its interval. */
const finest = 3

/** Ends whose distances from the value differ by more than this are rounded each by its own. */
const skewed = 4

/** Most decimals. */
const decimals = 9

const smallest = 1e-9

/**
 * No more digits than the interval bears: 4.123 (2.61 to 5.99) reads 4.1 (2.6 to 6.0), and the far end of
 * a skewed interval is told more coarsely than the near one: 9 (1 to 120). What is more than nothing and less than
 * the last digit reads "under" it; what has no spread has three digits.
 */
export function written({ value, low, high, least = 0 }: Banded, signs: FigureSigns): Written {
  const gaps = { low: value - low, high: high - value }
  const known = Object.values(gaps).filter((gap) => gap > 0)
  if (!hasSpread({ value, low, high }) || known.length === 0) {
    const alone = writtenAlone(value, signs)
    return { value: alone, low: alone, high: alone }
  }
  const [near, far] = [Math.min(...known), Math.max(...known)]
  // Where the value lies all but on one end, the other end tells how well it is known.
  const smallestPlace = least > 0 ? magnitude(least) : Number.NEGATIVE_INFINITY
  const place = Math.max(placeFor(near), placeFor(far) - finest, smallestPlace)
  const put = (end: number, gap: number) => {
    const at = far / near > skewed && gap === far ? Math.max(placeFor(far), smallestPlace) : place
    // Of what cannot be below nothing a row of noughts says no more than one.
    return low >= 0 && isNought(end, at) ? '0' : rounded(end, at, signs)
  }
  const isUnder = low >= 0 && value > 0 && isNought(value, place)
  return {
    value: isUnder ? `under ${rounded(10 ** place, place, signs)}` : rounded(value, place, signs),
    low: put(low, gaps.low),
    high: put(high, gaps.high),
  }
}

/** Whether all that is written of a value to this place is noughts. */
const isNought = (value: number, place: number) => Math.abs(value) < 10 ** place / 2

/** A sum over many days ends some parts in 10¹² beside itself; that is no spread. */
export const hasSpread = ({ value, low, high }: Banded): boolean =>
  high - low > 1e-6 * Math.max(Math.abs(value), smallest)

/** One number alone, to three digits: what was said or read, not computed. */
export const writtenAlone = (value: number, signs: FigureSigns): string =>
  rounded(value, magnitude(Math.max(Math.abs(value), smallest)) - 2, signs, true)

/** Whole digits with thousands apart: 1842, but 12 345. */
export const grouped = (digits: string, thousands: string): string =>
  digits.length > 4 ? digits.replace(/\B(?=(\d{3})+$)/g, thousands) : digits

/** Decimal place of the last digit worth writing: one digit of the gap, or two where the first is 1 or 2. */
function placeFor(gap: number): number {
  const size = Math.max(gap, smallest)
  const place = magnitude(size)
  return size / 10 ** place < 3 ? place - 1 : place
}

const magnitude = (size: number) => Math.floor(Math.log10(size))

function rounded(value: number, place: number, signs: FigureSigns, trim = false): string {
  const step = 10 ** place
  const snapped = place > 0 ? Math.round(value / step) * step : value
  const digits = Math.min(decimals, Math.max(0, -place))
  const fixed = Math.abs(snapped).toFixed(digits)
  const kept = trim && fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
  const [whole = '0', fraction] = kept.split('.')
  const sign = snapped < 0 && Number(kept) !== 0 ? signs.minus : ''
  return sign + grouped(whole, signs.thousands) + (fraction ? signs.decimal + fraction : '')
}
