import { coefficients } from './memory'
import { pair } from './pair'

/** Bytes of one stage in the table. */
const ROW: usize = 40

/** Places in a row: what counts the last change, the one before, the rates, the rates at the start, and in whole flows. */
export const ON_LAST: usize = 0
export const ON_BEFORE: usize = 8
export const ON_RATE: usize = 16
export const ON_FIRST_RATE: usize = 24
export const ON_FLOW: usize = 32

/** Where the coefficients of a stage lie; a member that has no more stages keeps what it has. */
export function rowOf(stages: i32, number: i32): usize {
  if (number > stages) return coefficients
  return coefficients + ROW * (1 + (stages * (stages - 1)) / 2 + number - 1)
}

export function ofBoth(first: usize, second: usize, place: usize): v128 {
  return pair(load<f64>(first + place), load<f64>(second + place))
}
