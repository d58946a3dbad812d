import { pow } from '@holdfast/elementary'
import { combineDimensions, type Dimension, equalDimensions } from './dimension.ts'

/** A unit as a dimension and a factor: one of it is `factor` × m, s, g, mol, mol photons, mol charge, K, psu. */
export interface Unit {
  readonly dimension: Dimension
  readonly factor: number
  /** K at 0, for °C and °F standing alone; a product or a quotient has none, there they are differences. */
  readonly zero?: number
  /** What it is of or how it was weighed ('N', 'dry', 'body mass'), for people; arithmetic ignores them. */
  readonly remarks: readonly string[]
}

export const dimensionless: Unit = { dimension: {}, factor: 1, remarks: [] }

const SAME_FACTOR = 1e-9

export function multiplyUnits(a: Unit, b: Unit): Unit {
  return {
    dimension: combineDimensions(a.dimension, b.dimension, 1),
    factor: a.factor * b.factor,
    remarks: [...a.remarks, ...b.remarks],
  }
}

export function divideUnits(a: Unit, b: Unit): Unit {
  return {
    dimension: combineDimensions(a.dimension, b.dimension, -1),
    factor: a.factor / b.factor,
    remarks: [...a.remarks, ...b.remarks],
  }
}

/** The unit to the power n, whole or broken. */
export function powerUnit(unit: Unit, n: number): Unit {
  if (n === 1) return unit
  return {
    dimension: combineDimensions({}, unit.dimension, n),
    factor: pow(unit.factor, n),
    remarks: unit.remarks,
  }
}

/** Same dimension, whatever the size. */
export function sameDimension(a: Unit, b: Unit): boolean {
  return equalDimensions(a.dimension, b.dimension)
}

/** Same dimension and size (within 1e-9); °C and K count as equal, since formulas hold differences. */
export function equalUnits(a: Unit, b: Unit): boolean {
  return sameDimension(a, b) && Math.abs(a.factor / b.factor - 1) <= SAME_FACTOR
}
