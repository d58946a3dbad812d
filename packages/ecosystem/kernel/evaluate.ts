import {
  all,
  ends,
  flows,
  gathered,
  gatheredBytes,
  inside,
  overFlows,
  quick,
  quickSlope,
  slope,
} from './memory'
import { gain, negative } from './pair'
import { eventProcess, quickProcesses, slowProcesses } from './processes'

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
  memory.fill(gathered, 0, gatheredBytes)
  slowProcesses()
}

/** Net rates by quick processes at the stage; with books the rates of their flows too. */
export function evaluateQuick(): void {
  if (quick === 0) return
  memory.fill(quickSlope, 0, quick)
  memory.fill(gathered, 0, gatheredBytes)
  quickProcesses()
}

/** What one event moves, at the states of the stage. */
export function happen(index: i32): void {
  memory.fill(gathered, 0, gatheredBytes)
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
