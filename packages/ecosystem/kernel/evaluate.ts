import {
  all,
  ends,
  flows,
  gathered,
  inside,
  overFlows,
  quick,
  quickSlope,
  quickSums,
  slope,
  stage,
  start,
  sums,
} from './memory'
import { add, both, gain, mul, negative } from './pair'
import {
  allSums,
  eventProcess,
  eventReadsSums,
  quickProcesses,
  slowProcesses,
  sumsForQuick,
} from './processes'

/** Equations other than the declared ones, worked out by the host: it writes slopes and flows. */
declare function foreignRates(): void

let foreign: bool = false

export function useForeign(on: bool): void {
  foreign = on
}

/** Net rates by slow processes at the stage; with books the rates of their flows too. */
export function evaluateSlow(): void {
  memory.fill(slope, 0, all)
  if (foreign) {
    foreignRates()
    return
  }
  memory.fill(gathered, 0, sums)
  slowProcesses()
}

/**
 * Sums of slow processes for the way to the stage that is set out: quick processes find them in the middle
 * between those they were at the stage before and those they will be, as they find slow flows evenly.
 */
export function sumOnTheWay(before: usize): void {
  memory.fill(gathered + quickSums, 0, sums - quickSums)
  sumsForQuick()
  for (let i = quickSums; i < sums; i += 16)
    v128.store(gathered + i, mul(both(0.5), add(v128.load(before + i), v128.load(gathered + i))))
}

/** Net rates by quick processes at the stage, with the sums of slow ones as these left them. */
export function evaluateQuick(): void {
  if (quick === 0) return
  memory.fill(quickSlope, 0, quick)
  memory.fill(gathered, 0, quickSums)
  quickProcesses()
}

/** What one event moves, at the states at the start. */
export function happen(index: i32): void {
  memory.copy(stage, start, all)
  if (eventReadsSums(index)) {
    memory.fill(gathered, 0, sums)
    allSums()
  }
  eventProcess(index)
}

/** Net rates of the accounts outside, by the flows of slow and quick processes as they were last written. */
export function evaluateOutside(): void {
  memory.fill(slope + inside, 0, all - inside)
  scatterOutside(flows, slope)
}

/** Adds flows to the accounts outside that they enter, and takes them from those they leave. */
export function scatterOutside(from: usize, to: usize): void {
  let end = ends
  for (let at: usize = 0; at < overFlows; at += 16) {
    const flow = v128.load(from + at)
    const left = load<i32>(end)
    const entered = load<i32>(end, 4)
    if (left >= i32(inside)) gain(to + left, negative(flow))
    if (entered >= i32(inside)) gain(to + entered, flow)
    end += 8
  }
}
