import { evaluateOutside, evaluateQuick, evaluateSlow } from './evaluate'
import {
  all,
  answer,
  books,
  ends,
  flows,
  flowsStart,
  gathered,
  gatheredStart,
  inside,
  overFlows,
  slope,
  slopeStart,
  stage,
  start,
  sums,
  totals,
  wholeFlows,
} from './memory'
import { add, both, div, gain, mask, mul, negative, pair, sub, where } from './pair'
import { slowProcess } from './processes'
import { slowChange } from './stages'
import { weight } from './weight'

/** Rates at the start of a run or after an event; where those inside are known, what books need beside them. */
export function begin(known: bool): void {
  if (known && !books) return
  memory.copy(stage, start, all)
  evaluateSlow()
  memory.copy(gatheredStart, gathered, sums)
  if (books) {
    evaluateQuick()
    evaluateOutside()
    memory.copy(flowsStart, flows, overFlows)
  }
  if (known) memory.copy(slopeStart + inside, slope + inside, all - inside)
  else memory.copy(slopeStart, slope, all)
}

/**
 * Takes what one slow process gives out of the rates at the start, or puts it in: before and after an event that
 * changes nothing that any other reads, and none of the sums that slow ones read.
 */
export function leaveOut(index: i32): void {
  evaluateAlone(index)
  for (let i: usize = 0; i < inside; i += 16)
    v128.store(slopeStart + i, sub(v128.load(slopeStart + i), v128.load(slope + i)))
}
export function putIn(index: i32): void {
  evaluateAlone(index)
  for (let i: usize = 0; i < inside; i += 16) gain(slopeStart + i, v128.load(slope + i))
}

function evaluateAlone(index: i32): void {
  memory.copy(stage, start, all)
  memory.copy(gathered, gatheredStart, sums)
  memory.fill(slope, 0, all)
  slowProcess(index)
}

/** The least of the states inside at the stage, a member each. */
export function lowest(): void {
  let low = both(Infinity)
  for (let i: usize = 0; i < inside; i += 16) low = f64x2.pmin(low, v128.load(stage + i))
  v128.store(answer, low)
}

/**
 * Works out the rates of slow processes at the end of the step, and how far the step is off in what they
 * do: the estimate by Sommeijer, Shampine & Verwer (1998) of the worst state, 1 where it is just allowed.
 */
export function error(days0: f64, days1: f64, relative: f64, strictness: f64): void {
  evaluateSlow()
  if (books) evaluateOutside()
  const changes = slowChange()
  const days = mul(both(0.4), pair(days0, days1))
  let most = both(0)
  for (let i: usize = 0; i < inside; i += 16) {
    const change = mul(both(-0.8), v128.load(changes + i))
    const slopes = add(v128.load(slopeStart + i), v128.load(slope + i))
    const off = div(add(change, mul(days, slopes)), weight(both(strictness), both(relative), i))
    most = f64x2.max(most, f64x2.abs(off))
  }
  v128.store(answer, most)
}

/** Takes the step of the members that are meant. */
export function take(first: bool, second: bool): void {
  const these = mask(first, second)
  const over = books ? all : inside
  for (let i: usize = 0; i < over; i += 16) {
    v128.store(start + i, where(these, v128.load(stage + i), v128.load(start + i)))
    v128.store(slopeStart + i, where(these, v128.load(slope + i), v128.load(slopeStart + i)))
  }
  for (let i: usize = 0; i < sums; i += 16)
    v128.store(gatheredStart + i, where(these, v128.load(gathered + i), v128.load(gatheredStart + i)))
  if (!books) return
  for (let k: usize = 0; k < overFlows; k += 16) {
    gain(totals + k, v128.and(these, v128.load(wholeFlows + k)))
    v128.store(flowsStart + k, where(these, v128.load(flows + k), v128.load(flowsStart + k)))
  }
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
