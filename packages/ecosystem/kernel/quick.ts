import { evaluateQuick } from './evaluate'
import { bookAnswers, findAnswers, makeImplicit } from './implicit'
import {
  answer,
  books,
  damping,
  flows,
  forcing,
  overPulls,
  pulls,
  pullsBetween,
  pullsStart,
  quick,
  quickFirst,
  quickFlows,
  quickFlowsStart,
  quickSecond,
  quickSlope,
  quickSlopeStart,
  quickStart,
  quickWholeFlows,
  stage,
  start,
  wholeFlows,
} from './memory'
import { add, both, div, gain, mask, mul, pair, sub, where } from './pair'
import { weight } from './weight'

/** Sets the quick states out from the start of the step. */
export function beginQuick(): void {
  memory.copy(quickStart, start, quick)
}

/** Quick rates where a way to a stage begins, with the sums of that way. */
export function beginWay(): void {
  memory.copy(stage, quickStart, quick)
  evaluateQuick()
  memory.copy(quickSlopeStart, quickSlope, quick)
  memory.copy(quickFlowsStart, flows, quickFlows)
  memory.copy(pullsStart, pulls, overPulls)
}

/**
 * One short step of the quick states of each member, under what slow processes do meanwhile: ROS2 (Verwer, Spee, Blom
 * & Hundsdorfer 1999, SIAM J Sci Comput 20:1456; as recalled), whose order is two whatever stands for the Jacobian.
 */
export function stepQuick(days0: f64, days1: f64): void {
  const days = pair(days0, days1)
  const onFirst = mul(both(1.5), days)
  const onSecond = mul(both(0.5), days)
  findAnswers(days)
  for (let i: usize = 0; i < quick; i += 16)
    v128.store(quickFirst + i, add(v128.load(quickSlopeStart + i), v128.load(forcing + i)))
  makeImplicit(quickFirst)
  if (books) {
    memory.fill(quickWholeFlows, 0, quickFlows)
    book(quickFlowsStart, onSecond)
  }
  for (let i: usize = 0; i < quick; i += 16)
    v128.store(stage + i, add(v128.load(quickStart + i), mul(days, v128.load(quickFirst + i))))
  evaluateQuick()
  memory.copy(pullsBetween, pulls, overPulls)
  for (let i: usize = 0; i < quick; i += 16) {
    const rates = add(v128.load(quickSlope + i), v128.load(forcing + i))
    v128.store(quickSecond + i, sub(rates, mul(both(2), v128.load(quickFirst + i))))
  }
  makeImplicit(quickSecond)
  if (books) book(flows, onSecond)
  for (let i: usize = 0; i < quick; i += 16) {
    const first = mul(onFirst, v128.load(quickFirst + i))
    const change = add(first, mul(onSecond, v128.load(quickSecond + i)))
    v128.store(stage + i, add(v128.load(quickStart + i), change))
  }
}

/**
 * Adds the flows of a stage and what they answered there to the whole flows. The second rates are less twice the first,
 * so that with 1.5 and 0.5 of them both stages count for half a step.
 */
function book(rates: usize, days: v128): void {
  for (let k: usize = 0; k < quickFlows; k += 16) gain(quickWholeFlows + k, mul(days, v128.load(rates + k)))
  bookAnswers(days)
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
    // What is off in a fast account makes its rate far off, and is over at once.
    const damped = mul(v128.load(damping + i), add(change, mul(days, slopes)))
    most = f64x2.max(most, f64x2.abs(div(damped, weight(both(strictness), both(relative), i))))
    low = f64x2.pmin(
      low,
      v128.and(f64x2.lt(v128.load(stage + i), v128.load(quickStart + i)), v128.load(stage + i)),
    )
  }
  for (let p: usize = 0; p < overPulls; p += 16) {
    v128.store(pulls + p, steeper(v128.load(pulls + p), v128.load(pullsBetween + p)))
    v128.store(pullsStart + p, steeper(v128.load(pullsStart + p), v128.load(pullsBetween + p)))
  }
  const below = f64x2.lt(low, both(0))
  v128.store(answer, f64x2.max(most, v128.and(below, both(BELOW_ZERO))))
}

/**
 * Where a formula bends, a step may see its flat side at both ends and its steep side between, and go to and fro. The
 * next step is told what this one came upon.
 */
function steeper(own: v128, between: v128): v128 {
  return where(f64x2.gt(between, mul(both(2), own)), between, own)
}

/** Takes the short step of the members that are meant. */
export function takeQuick(first: bool, second: bool): void {
  const these = mask(first, second)
  if (books)
    for (let k: usize = 0; k < quickFlows; k += 16)
      gain(wholeFlows + k, v128.and(these, v128.load(quickWholeFlows + k)))
  move(quickStart, stage, quick, these)
  move(quickSlopeStart, quickSlope, quick, these)
  move(quickFlowsStart, flows, quickFlows, these)
  move(pullsStart, pulls, overPulls, these)
}

/** Copies the numbers of the members that are meant. */
function move(to: usize, from: usize, bytes: usize, these: v128): void {
  if (i64x2.all_true(these)) memory.copy(to, from, bytes)
  else
    for (let i: usize = 0; i < bytes; i += 16)
      v128.store(to + i, where(these, v128.load(from + i), v128.load(to + i)))
}
