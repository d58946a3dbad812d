import { ON_BEFORE, ON_FIRST_RATE, ON_FLOW, ON_LAST, ON_RATE, ofBoth, rowOf } from './coefficients'
import { evaluateQuick } from './evaluate'
import {
  answer,
  books,
  flows,
  forcing,
  quick,
  quickChangeBefore,
  quickFlows,
  quickFlowsStart,
  quickLastChange,
  quickSlope,
  quickSlopeStart,
  quickStart,
  quickWholeFlows,
  stage,
  start,
  wholeFlows,
} from './memory'
import { add, both, div, gain, mask, mul, pair, sub, where } from './pair'
import { ALLOWED, weight } from './weight'

/** Sets the quick states out from the start of the step. */
export function beginQuick(): void {
  memory.copy(quickStart, start, quick)
}

/** Quick rates where a way to a stage begins, with the sums of that way. */
export function beginWay(): void {
  memory.copy(stage, quickStart, quick)
  evaluateQuick()
  memory.copy(quickSlopeStart, quickSlope, quick)
  if (books) memory.copy(quickFlowsStart, flows, quickFlows)
}

/** One short step of the quick states of each member, under what slow processes do meanwhile. */
export function stepQuick(stages0: i32, stages1: i32, days0: f64, days1: f64): void {
  const number = stages0 > stages1 ? stages0 : stages1
  const days = pair(days0, days1)
  let last = quickLastChange
  let before = quickChangeBefore
  let row0 = rowOf(stages0, 1)
  let row1 = rowOf(stages1, 1)
  const first = mul(ofBoth(row0, row1, ON_RATE), days)
  for (let i: usize = 0; i < quick; i += 16) {
    const change = mul(first, add(v128.load(quickSlopeStart + i), v128.load(forcing + i)))
    v128.store(last + i, change)
    v128.store(before + i, both(0))
    v128.store(stage + i, add(v128.load(quickStart + i), change))
  }
  if (books) {
    const onFlow = mul(ofBoth(row0, row1, ON_FLOW), days)
    for (let k: usize = 0; k < quickFlows; k += 16)
      v128.store(quickWholeFlows + k, mul(onFlow, v128.load(quickFlowsStart + k)))
  }
  for (let j = 2; j <= number; j++) {
    evaluateQuick()
    row0 = rowOf(stages0, j)
    row1 = rowOf(stages1, j)
    const onLast = ofBoth(row0, row1, ON_LAST)
    const onBefore = ofBoth(row0, row1, ON_BEFORE)
    const onRate = mul(ofBoth(row0, row1, ON_RATE), days)
    const onFirstRate = mul(ofBoth(row0, row1, ON_FIRST_RATE), days)
    for (let i: usize = 0; i < quick; i += 16) {
      const forced = v128.load(forcing + i)
      const kept = add(mul(onLast, v128.load(last + i)), mul(onBefore, v128.load(before + i)))
      const moved = add(kept, mul(onRate, add(v128.load(quickSlope + i), forced)))
      const change = add(moved, mul(onFirstRate, add(v128.load(quickSlopeStart + i), forced)))
      v128.store(before + i, change)
      v128.store(stage + i, add(v128.load(quickStart + i), change))
    }
    if (books) {
      const onFlow = mul(ofBoth(row0, row1, ON_FLOW), days)
      for (let k: usize = 0; k < quickFlows; k += 16)
        gain(quickWholeFlows + k, mul(onFlow, v128.load(flows + k)))
    }
    const free = last
    last = before
    before = free
  }
}

/** What a short step is taken to be off by that brings a state below zero: half of it is tried. */
const BELOW_ZERO: f64 = 4

/** Works out the quick rates at the end of the short step, and how far its worst state is off, 1 where just allowed. */
export function errorQuick(days0: f64, days1: f64, relative: f64, strictness: f64): void {
  evaluateQuick()
  const days = mul(both(0.4), pair(days0, days1))
  let most = both(0)
  let low = both(0)
  for (let i: usize = 0; i < quick; i += 16) {
    const change = mul(both(0.8), sub(v128.load(quickStart + i), v128.load(stage + i)))
    const forced = mul(both(2), v128.load(forcing + i))
    const slopes = add(add(v128.load(quickSlopeStart + i), v128.load(quickSlope + i)), forced)
    const off = div(add(change, mul(days, slopes)), weight(both(strictness), both(relative), i))
    most = f64x2.max(most, f64x2.abs(off))
    low = f64x2.pmin(
      low,
      v128.and(f64x2.lt(v128.load(stage + i), v128.load(quickStart + i)), v128.load(stage + i)),
    )
  }
  const below = f64x2.lt(low, both(0))
  v128.store(answer, f64x2.max(div(most, both(ALLOWED)), v128.and(below, both(BELOW_ZERO))))
}

/** Takes the short step of the members that are meant. */
export function takeQuick(first: bool, second: bool): void {
  const these = mask(first, second)
  for (let i: usize = 0; i < quick; i += 16) {
    v128.store(quickStart + i, where(these, v128.load(stage + i), v128.load(quickStart + i)))
    v128.store(quickSlopeStart + i, where(these, v128.load(quickSlope + i), v128.load(quickSlopeStart + i)))
  }
  if (!books) return
  for (let k: usize = 0; k < quickFlows; k += 16) {
    gain(wholeFlows + k, v128.and(these, v128.load(quickWholeFlows + k)))
    v128.store(quickFlowsStart + k, where(these, v128.load(flows + k), v128.load(quickFlowsStart + k)))
  }
}
