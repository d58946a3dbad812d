/** A value with the ends of its 90 % interval, as it is written on a page: no more digits than the interval bears. */
export interface Written {
  readonly value: string
  readonly low: string
  readonly high: string
}

/**
 * Rounds to the second digit of half the interval, so that 4.123 (2.61 to 5.99) reads 4.1 (2.6 to 6.0).
 * A figure without spread keeps three digits.
 */
export function written(value: number, low: number, high: number): Written {
  const half = (high - low) / 2
  const place = half > 0 ? magnitude(half) - 1 : magnitude(Math.max(Math.abs(value), 1e-9)) - 2
  const put = (number: number) => rounded(number, place)
  return { value: put(value), low: put(low), high: put(high) }
}

/** One number alone, to three digits: what was said or read, not computed. */
export const plain = (value: number) => rounded(value, magnitude(Math.max(Math.abs(value), 1e-9)) - 2, true)

const magnitude = (size: number) => Math.floor(Math.log10(size))

function rounded(value: number, place: number, trim = false): string {
  const step = 10 ** place
  const snapped = place > 0 ? Math.round(value / step) * step : value
  const digits = Math.min(6, Math.max(0, -place))
  const fixed = Math.abs(snapped).toFixed(digits)
  const kept = trim && fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
  const [whole = '0', fraction] = kept.split('.')
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole
  const sign = snapped < 0 && Number(kept) !== 0 ? '\u2212' : ''
  return sign + (fraction ? `${grouped}.${fraction}` : grouped)
}
