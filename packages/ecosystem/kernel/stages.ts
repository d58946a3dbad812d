import { ON_BEFORE, ON_FIRST_RATE, ON_FLOW, ON_LAST, ON_RATE, ofBoth, rowOf } from './coefficients'
import { evaluateSlow, scatterOutside, sumOnTheWay } from './evaluate'
import {
  all,
  books,
  changeBefore,
  flows,
  flowsStart,
  forcing,
  gathered,
  gatheredBefore,
  gatheredStart,
  inside,
  lastChange,
  overFlows,
  quick,
  quickFlows,
  slope,
  slopeStart,
  stage,
  start,
  sums,
  wholeFlows,
} from './memory'
import { add, both, mul, pair, sub } from './pair'
import { beginWay } from './quick'

/** Changes by slow processes at the last stage and at the one before. */
let last: usize = 0
let before: usize = 0

/** Where the changes by slow processes lie after the last stage. */
export function slowChange(): usize {
  return last
}

/**
 * The first stage of a step of each member, by its own number of stages (0: it stays) and its own length in
 * days. What slow processes do until then is spread evenly over the quick states' way to it: `per` is one
 * over the days of that way, 0 where there is none.
 */
export function firstStage(stages0: i32, stages1: i32, days0: f64, days1: f64, per0: f64, per1: f64): void {
  last = lastChange
  before = changeBefore
  const row0 = rowOf(stages0, 1)
  const row1 = rowOf(stages1, 1)
  const days = pair(days0, days1)
  const first = mul(ofBoth(row0, row1, ON_RATE), days)
  const per = pair(per0, per1)
  for (let i: usize = 0; i < inside; i += 16) {
    const change = mul(first, v128.load(slopeStart + i))
    v128.store(last + i, change)
    v128.store(before + i, both(0))
    if (i < quick) v128.store(forcing + i, mul(change, per))
    else v128.store(stage + i, add(v128.load(start + i), change))
  }
  sumOnTheWay(gatheredStart)
  beginWay()
  if (!books) return
  const onFlow = mul(ofBoth(row0, row1, ON_FLOW), days)
  memory.fill(wholeFlows, 0, quickFlows)
  for (let k = quickFlows; k < overFlows; k += 16)
    v128.store(wholeFlows + k, mul(onFlow, v128.load(flowsStart + k)))
}

/** The next stage, from the slow processes at the stage before. */
export function nextStage(
  number: i32,
  stages0: i32,
  stages1: i32,
  days0: f64,
  days1: f64,
  per0: f64,
  per1: f64,
): void {
  evaluateSlow()
  memory.copy(gatheredBefore, gathered, sums)
  const row0 = rowOf(stages0, number)
  const row1 = rowOf(stages1, number)
  const days = pair(days0, days1)
  const per = pair(per0, per1)
  const onLast = ofBoth(row0, row1, ON_LAST)
  const onBefore = ofBoth(row0, row1, ON_BEFORE)
  const onRate = mul(ofBoth(row0, row1, ON_RATE), days)
  const onFirstRate = mul(ofBoth(row0, row1, ON_FIRST_RATE), days)
  for (let i: usize = 0; i < inside; i += 16) {
    const lately = v128.load(last + i)
    const kept = add(mul(onLast, lately), mul(onBefore, v128.load(before + i)))
    const moved = add(kept, mul(onRate, v128.load(slope + i)))
    const change = add(moved, mul(onFirstRate, v128.load(slopeStart + i)))
    v128.store(before + i, change)
    if (i < quick) v128.store(forcing + i, mul(sub(change, lately), per))
    else v128.store(stage + i, add(v128.load(start + i), change))
  }
  const free = last
  last = before
  before = free
  sumOnTheWay(gatheredBefore)
  beginWay()
  if (!books) return
  const onFlow = mul(ofBoth(row0, row1, ON_FLOW), days)
  for (let k = quickFlows; k < overFlows; k += 16)
    v128.store(wholeFlows + k, add(v128.load(wholeFlows + k), mul(onFlow, v128.load(flows + k))))
}

/** The accounts outside at the end of the step, where books are kept. */
export function closeStages(): void {
  if (!books) return
  memory.copy(stage + inside, start + inside, all - inside)
  scatterOutside(wholeFlows, stage)
}
