import { type Banded, type FigureSigns, hasSpread, written } from '@holdfast/quantities'

/** As programs read numbers too. */
const signs: FigureSigns = { decimal: '.', minus: '-', thousands: '' }

/** "4.1 (2.6 to 6.0)", as the page has it; a figure without a spread is written alone. */
export function figure(banded: Banded): string {
  const { value, low, high } = written(banded, signs)
  return hasSpread(banded) ? `${value} (${low} to ${high})` : value
}

/** A share as per cent. */
export function percent(share: number): string {
  const size = Math.abs(100 * share)
  const text = (100 * share).toFixed(size < 9.95 ? 1 : 0)
  return `${Number(text) === 0 ? text.replace('-', '') : text} %`
}
