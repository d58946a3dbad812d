/** A figure with the ends of its 90 % interval. */
export interface Banded {
  readonly value: number
  readonly low: number
  readonly high: number
}

/**
 * "4.1 (2.6 to 6.0)", with no more digits than the nearer end of the interval bears; a figure without
 * a spread is written alone, to three digits.
 */
export function figure({ value, low, high }: Banded): string {
  const gaps = [Math.abs(value - low), Math.abs(high - value)].filter((gap) => gap > 1e-9)
  if (gaps.length === 0) return Number(value.toPrecision(3)).toString()
  const near = Math.min(...gaps)
  const size = Math.floor(Math.log10(near))
  // A gap that begins with 1 or 2 bears a second digit.
  const place = near / 10 ** size < 3 ? size - 1 : size
  const put = (number: number): string => rounded(number, place)
  return `${put(value)} (${put(low)} to ${put(high)})`
}

function rounded(number: number, place: number): string {
  const step = 10 ** place
  const snapped = place > 0 ? Math.round(number / step) * step : number
  const text = snapped.toFixed(Math.min(9, Math.max(0, -place)))
  return Number(text) === 0 ? text.replace('-', '') : text
}

/** A share as per cent. */
export function percent(share: number): string {
  const size = Math.abs(100 * share)
  const text = (100 * share).toFixed(size < 9.95 ? 1 : 0)
  return `${Number(text) === 0 ? text.replace('-', '') : text} %`
}
