import { evaluateSlow } from './evaluate'
import {
  all,
  answer,
  direction,
  ends,
  flows,
  inside,
  losses,
  overFlows,
  quickFlows,
  slope,
  slopeStart,
  stage,
  start,
  tolerance,
} from './memory'
import { add, both, div, gain, mask, mul, negative, pair, sub, where } from './pair'
import { weight } from './weight'

/** Moves the stage off the start along the direction, by a number of its own lengths for each member. */
export function shift(scale0: f64, scale1: f64): void {
  const scale = pair(scale0, scale1)
  for (let i: usize = 0; i < inside; i += 16)
    v128.store(stage + i, add(v128.load(start + i), mul(v128.load(direction + i), scale)))
  evaluateSlow()
}

/** Turns the direction of the members that are meant to how the rates differ from those at the start. */
export function turn(first: bool, second: bool): void {
  const these = mask(first, second)
  for (let i: usize = 0; i < inside; i += 16) {
    const differs = sub(v128.load(slope + i), v128.load(slopeStart + i))
    v128.store(direction + i, where(these, differs, v128.load(direction + i)))
  }
}

/** Length of the direction in tolerances, a member each. */
export function length(relative: f64, strictness: f64): void {
  let sum = both(0)
  for (let i: usize = 0; i < inside; i += 16) {
    const part = div(v128.load(direction + i), weight(both(strictness), both(relative), i))
    sum = add(sum, mul(part, part))
  }
  v128.store(answer, f64x2.sqrt(sum))
}

/**
 * What slow processes take from a state in a day as a share of what it holds, the largest; one below `least` tolerances
 * counts as that. The flows are those of the last evaluation with books.
 */
export function fastestLoss(least: f64): void {
  memory.fill(losses, 0, all)
  let end = ends + quickFlows / 2
  for (let k = quickFlows; k < overFlows; k += 16) {
    const flow = v128.load(flows + k)
    const left = load<i32>(end)
    const entered = load<i32>(end, 4)
    if (left >= 0) gain(losses + left, f64x2.pmax(both(0), flow))
    if (entered >= 0) gain(losses + entered, f64x2.pmax(both(0), negative(flow)))
    end += 8
  }
  let fastest = both(0)
  for (let i: usize = 0; i < inside; i += 16) {
    const held = f64x2.pmax(v128.load(start + i), mul(both(least), v128.load(tolerance + i)))
    // A state below zero is none that empties: it is of equations in which states have a sign.
    const share = div(v128.load(losses + i), held)
    fastest = f64x2.pmax(fastest, v128.and(f64x2.ge(v128.load(start + i), both(0)), share))
  }
  v128.store(answer, fastest)
}
