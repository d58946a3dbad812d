import type { Issue } from './issue.ts'
import { parseUnit, UnitError } from './parse-unit.ts'
import { sameDimension, type Unit } from './unit.ts'

/**
 * The value in another unit. Between °C and °F standing alone this is the temperature, in a product or a
 * quotient the difference.
 *
 * @throws UnitError where a unit is unknown or the two differ in dimension
 */
export function convert(value: number, from: string, to: string): number {
  const source = parseUnit(from)
  const target = parseUnit(to)
  if (!sameDimension(source, target)) {
    const issue: Issue = {
      code: 'wrong-dimension',
      where: 'Unit',
      got: from,
      accepted: [to],
      next: 'write-unit',
    }
    throw new UnitError(issue)
  }
  return between(value, source, target)
}

/** As `convert`, for units already read and known to be of one dimension. */
export function between(value: number, from: Unit, to: Unit): number {
  if (from.zero === undefined || to.zero === undefined) return value * (from.factor / to.factor)
  return (value * from.factor + from.zero - to.zero) / to.factor
}
