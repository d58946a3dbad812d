import { evaluate } from './evaluate'
import {
  all,
  answer,
  books,
  direction,
  ends,
  flows,
  flowsStart,
  inside,
  losses,
  overFlows,
  slope,
  slopeStart,
  stage,
  start,
  tolerance,
  totals,
  wholeFlows,
} from './memory'
import { add, both, div, gain, mul, negative, sub, where } from './pair'

function pair(first: f64, second: f64): v128 {
  return f64x2.replace_lane(f64x2.splat(first), 1, second)
}

/** A mask of whole numbers: all bits of a member that is meant. */
function mask(first: bool, second: bool): v128 {
  return i64x2.replace_lane(i64x2.splat(first ? -1 : 0), 1, second ? -1 : 0)
}

/** What one tolerance is, of a state of this size. */
function weight(strictness: v128, relative: v128, i: usize): v128 {
  const absolute = mul(v128.load(tolerance + i), strictness)
  return add(absolute, mul(relative, f64x2.abs(v128.load(start + i))))
}

/** Rates at the start of a run or after an event. */
export function begin(): void {
  memory.copy(stage, start, all)
  evaluate()
  memory.copy(slopeStart, slope, all)
  if (books) memory.copy(flowsStart, flows, overFlows)
}

/** The least of the states inside at the stage, a member each. */
export function lowest(): void {
  let low = both(Infinity)
  for (let i: usize = 0; i < inside; i += 16) low = f64x2.pmin(low, v128.load(stage + i))
  v128.store(answer, low)
}

/**
 * Works out the rates at the end of the step, and how far the step is off: the root of the mean square of
 * the estimate by Sommeijer, Shampine & Verwer (1998), in tolerances.
 */
export function error(days0: f64, days1: f64, relative: f64, strictness: f64): void {
  evaluate()
  const days = mul(both(0.4), pair(days0, days1))
  let sum = both(0)
  for (let i: usize = 0; i < inside; i += 16) {
    const change = mul(both(0.8), sub(v128.load(start + i), v128.load(stage + i)))
    const slopes = add(v128.load(slopeStart + i), v128.load(slope + i))
    const off = div(add(change, mul(days, slopes)), weight(both(strictness), both(relative), i))
    sum = add(sum, mul(off, off))
  }
  v128.store(answer, f64x2.sqrt(div(sum, both(f64(inside / 16)))))
}

/** Takes the step of the members that are meant. */
export function take(first: bool, second: bool): void {
  const these = mask(first, second)
  const over = books ? all : inside
  for (let i: usize = 0; i < over; i += 16) {
    v128.store(start + i, where(these, v128.load(stage + i), v128.load(start + i)))
    v128.store(slopeStart + i, where(these, v128.load(slope + i), v128.load(slopeStart + i)))
  }
  if (!books) return
  for (let k: usize = 0; k < overFlows; k += 16) {
    gain(totals + k, v128.and(these, v128.load(wholeFlows + k)))
    v128.store(flowsStart + k, where(these, v128.load(flows + k), v128.load(flowsStart + k)))
  }
}

/** Moves the stage off the start along the direction, by a number of its own lengths for each member. */
export function shift(scale0: f64, scale1: f64): void {
  const scale = pair(scale0, scale1)
  for (let i: usize = 0; i < inside; i += 16)
    v128.store(stage + i, add(v128.load(start + i), mul(v128.load(direction + i), scale)))
  evaluate()
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
 * What leaves a state in a day as a share of what it holds, the largest; one below `least` tolerances
 * counts as that. The flows are those of the last evaluation with books.
 */
export function fastestLoss(least: f64): void {
  memory.fill(losses, 0, all)
  let end = ends
  for (let k: usize = 0; k < overFlows; k += 16) {
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
    fastest = f64x2.pmax(fastest, div(v128.load(losses + i), held))
  }
  v128.store(answer, fastest)
}

/** Whole flows that were scaled: the states at the end of the step are the start and these. */
export function restage(first: bool, second: bool): void {
  const these = mask(first, second)
  for (let i: usize = 0; i < all; i += 16)
    v128.store(stage + i, where(these, v128.load(start + i), v128.load(stage + i)))
  let end = ends
  for (let k: usize = 0; k < overFlows; k += 16) {
    const flow = v128.and(these, v128.load(wholeFlows + k))
    const left = load<i32>(end)
    const entered = load<i32>(end, 4)
    if (left >= 0) gain(stage + left, negative(flow))
    if (entered >= 0) gain(stage + entered, flow)
    end += 8
  }
}

/**
 * States inside the step, by the cubic through both ends and their slopes, written for the members that
 * are meant. Slopes are held to what keeps the cubic between its ends (Fritsch & Carlson 1980).
 */
export function between(
  into: usize,
  first: bool,
  second: bool,
  days0: f64,
  days1: f64,
  share0: f64,
  share1: f64,
): void {
  const these = mask(first, second)
  const days = pair(days0, days1)
  const t = pair(share0, share1)
  const rest = sub(both(1), t)
  const onEnd = mul(mul(t, t), sub(both(3), mul(both(2), t)))
  const onStartSlope = mul(mul(mul(t, rest), rest), days)
  const onEndSlope = mul(mul(mul(t, t), negative(rest)), days)
  const steepest = div(both(3), days)
  const over = books ? all : inside
  for (let i: usize = 0; i < over; i += 16) {
    const before = v128.load(start + i)
    const after = v128.load(stage + i)
    const rise = sub(after, before)
    const most = mul(steepest, rise)
    const low = f64x2.pmin(most, both(0))
    const high = f64x2.pmax(most, both(0))
    const startSlope = f64x2.pmax(low, f64x2.pmin(high, v128.load(slopeStart + i)))
    const endSlope = f64x2.pmax(low, f64x2.pmin(high, v128.load(slope + i)))
    const risen = add(add(mul(onEnd, rise), mul(onStartSlope, startSlope)), mul(onEndSlope, endSlope))
    // At the end of the step the states are those at its end, to the bit.
    const now = where(f64x2.ge(t, both(1)), after, add(before, risen))
    v128.store(into + i, where(these, now, v128.load(into + i)))
  }
}
