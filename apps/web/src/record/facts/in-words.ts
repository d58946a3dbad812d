import type { Range } from '@holdfast/facts'
import { plain } from '../../figure/numbers.ts'

/** Low, typical and high with their unit. */
export function rangeInWords({ low, typical, high }: Range, unit: string): string {
  const of = unit === '1' ? '' : ` ${unit}`
  if (low === high) return `${plain(typical)}${of}, a constant`
  return `${plain(low)} to ${plain(high)}, typically ${plain(typical)}${of}`
}
