import { all, books, ends, flows, gathered, gatheredBytes, inside, overFlows, slope } from './memory'
import { gain, negative } from './pair'
import { processes } from './processes'

/** Equations other than the declared ones, worked out by the host: it writes slopes and flows. */
declare function foreignRates(): void

let foreign: bool = false

export function useForeign(on: bool): void {
  foreign = on
}

/** Net rates of all states at the stage; with books the rate of every flow too. */
export function evaluate(): void {
  memory.fill(slope, 0, all)
  if (foreign) {
    foreignRates()
    return
  }
  memory.fill(gathered, 0, gatheredBytes)
  processes()
  if (books) scatterOutside(flows, slope)
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
