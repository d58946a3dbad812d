import type { BaseDimension, Unit } from '@holdfast/quantities'

/** Names in which the units of formulas are told, and what one of each is in the base of `Unit`. */
const bases: readonly (readonly [BaseDimension, string, number])[] = [
  ['amount', 'µmol', 1e-6],
  ['photons', 'µmol photons', 1e-6],
  ['charge', 'meq', 1e-3],
  ['mass', 'g', 1],
  ['length', 'm', 1],
  ['temperature', '°C', 1],
  ['salinity', 'psu', 1],
  ['time', 'd', 86400],
]
const digits = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹']

/** A unit for people to read, such as `1000 × µmol m⁻³`; two units that differ read differently. */
export function unitText(unit: Unit): string {
  let factor = unit.factor
  const words: string[] = []
  for (const [base, name, size] of bases) {
    const exponent = unit.dimension[base] ?? 0
    if (exponent === 0) continue
    factor /= size ** exponent
    words.push(exponent === 1 ? name : name + raised(exponent))
  }
  const rounded = Number(factor.toPrecision(6))
  if (words.length === 0) return String(rounded)
  return rounded === 1 ? words.join(' ') : `${rounded} × ${words.join(' ')}`
}

const raised = (exponent: number): string =>
  Number.isInteger(exponent)
    ? [...String(exponent)].map((sign) => (sign === '-' ? '⁻' : digits[Number(sign)])).join('')
    : `^${exponent}`
