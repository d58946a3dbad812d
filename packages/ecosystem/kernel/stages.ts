import { evaluate, scatterOutside } from './evaluate'
import {
  all,
  books,
  changeBefore,
  coefficients,
  flows,
  flowsStart,
  inside,
  lastChange,
  overFlows,
  slope,
  slopeStart,
  stage,
  start,
  wholeFlows,
} from './memory'
import { add, mul } from './pair'

/** Bytes of one stage in the table: on the last change, on the one before, on rates, on the first rates, on flows. */
const ROW: usize = 40

/** Where the coefficients of a stage lie; a member that has no more stages keeps what it has. */
function rowOf(stages: i32, number: i32): usize {
  if (number > stages) return coefficients
  return coefficients + ROW * (1 + (stages * (stages - 1)) / 2 + number - 1)
}

function pairOf(first: usize, second: usize, offset: usize): v128 {
  return f64x2.replace_lane(f64x2.splat(load<f64>(first + offset)), 1, load<f64>(second + offset))
}

/**
 * One step of each member, by its own number of stages (0: it stays) and its own length in days. The states
 * at its end are left in the stage, whole flows with the books.
 */
export function stages(stages0: i32, stages1: i32, days0: f64, days1: f64): void {
  const number = stages0 > stages1 ? stages0 : stages1
  const days = f64x2.replace_lane(f64x2.splat(days0), 1, days1)
  let last = lastChange
  let before = changeBefore
  let row0 = rowOf(stages0, 1)
  let row1 = rowOf(stages1, 1)
  const first = mul(pairOf(row0, row1, 16), days)
  for (let i: usize = 0; i < inside; i += 16) {
    const change = mul(first, v128.load(slopeStart + i))
    v128.store(last + i, change)
    v128.store(before + i, f64x2.splat(0))
    v128.store(stage + i, add(v128.load(start + i), change))
  }
  if (books) {
    const onFlow = mul(pairOf(row0, row1, 32), days)
    for (let k: usize = 0; k < overFlows; k += 16)
      v128.store(wholeFlows + k, mul(onFlow, v128.load(flowsStart + k)))
  }
  for (let j = 2; j <= number; j++) {
    evaluate()
    row0 = rowOf(stages0, j)
    row1 = rowOf(stages1, j)
    const onLast = pairOf(row0, row1, 0)
    const onBefore = pairOf(row0, row1, 8)
    const onRate = mul(pairOf(row0, row1, 16), days)
    const onFirstRate = mul(pairOf(row0, row1, 24), days)
    for (let i: usize = 0; i < inside; i += 16) {
      const kept = add(mul(onLast, v128.load(last + i)), mul(onBefore, v128.load(before + i)))
      const moved = add(kept, mul(onRate, v128.load(slope + i)))
      const change = add(moved, mul(onFirstRate, v128.load(slopeStart + i)))
      v128.store(before + i, change)
      v128.store(stage + i, add(v128.load(start + i), change))
    }
    if (books) {
      const onFlow = mul(pairOf(row0, row1, 32), days)
      for (let k: usize = 0; k < overFlows; k += 16)
        v128.store(wholeFlows + k, add(v128.load(wholeFlows + k), mul(onFlow, v128.load(flows + k))))
    }
    const free = last
    last = before
    before = free
  }
  if (books) {
    memory.copy(stage + inside, start + inside, all - inside)
    scatterOutside(wholeFlows, stage)
  }
}
