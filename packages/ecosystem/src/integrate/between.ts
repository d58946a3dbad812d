import { scatter } from './equations.ts'
import type { Shape } from './shape.ts'

/** The flows of a step and the states at its start: what its books are made of. */
export interface Booked {
  readonly from: number
  readonly to: number
  readonly before: Float64Array
  /** Whole flows of the step, and rates of flows at both ends. */
  readonly flows: Float64Array
  readonly ratesBefore: Float64Array
  readonly ratesAfter: Float64Array
  /** What the flows of quick processes have moved until the day that is asked for, where it was looked up. */
  readonly quickFlows?: Float64Array
}

/**
 * What has flowed from the start of a step to a day inside it, and the states that it makes: the books
 * balance inside a step as they do at its ends.
 */
export function bookBetween(
  step: Booked,
  day: number,
  shape: Pick<Shape, 'from' | 'to' | 'floored' | 'quickFlows'>,
  flows: Float64Array,
  states: Float64Array,
): void {
  const at = weights(step, day)
  flowsBetween(step, at, flows)
  if (step.quickFlows)
    for (let k = 0; k < flows.length; k++) if (shape.quickFlows?.[k] === 1) flows[k] = step.quickFlows[k]
  states.set(step.before)
  scatter(shape, flows, states)
  if (!states.some((amount, i) => shape.floored[i] === 1 && amount < 0)) return
  // In one proportion for all flows the states lie on the line between two that are not below zero.
  for (let k = 0; k < flows.length; k++) flows[k] = at.share * step.flows[k]
  states.set(step.before)
  scatter(shape, flows, states)
}

/** Of flows alone: what each has moved from the start of a step to a day inside it. */
export function flowsUpTo(
  step: Pick<Booked, 'from' | 'to' | 'flows' | 'ratesBefore' | 'ratesAfter'>,
  day: number,
  into: Float64Array,
): void {
  flowsBetween(step, weights(step, day), into)
}

function flowsBetween(
  { flows, ratesBefore, ratesAfter }: Pick<Booked, 'flows' | 'ratesBefore' | 'ratesAfter'>,
  at: Weights,
  into: Float64Array,
): void {
  for (let k = 0; k < into.length; k++) into[k] = risen(flows[k], ratesBefore[k], ratesAfter[k], at)
}

interface Weights {
  readonly width: number
  /** Of the step that is over, 0 to 1. */
  readonly share: number
  readonly end: number
  readonly startSlope: number
  readonly endSlope: number
}

function weights({ from, to }: Pick<Booked, 'from' | 'to'>, day: number): Weights {
  const width = to - from
  const t = (day - from) / width
  return {
    width,
    share: t,
    end: t * t * (3 - 2 * t),
    startSlope: t * (1 - t) * (1 - t) * width,
    endSlope: t * t * (t - 1) * width,
  }
}

/**
 * Part of a rise that is behind at a day, when its slopes at both ends are these: by the cubic through both
 * ends. Slopes are held to what keeps it between its ends (Fritsch & Carlson 1980, SIAM J Numer Anal 17:238;
 * as recalled): in a long step over a fast balance the slope at an end is noise times the fastest rate.
 */
function risen(rise: number, slopeBefore: number, slopeAfter: number, at: Weights): number {
  const most = (3 * rise) / at.width
  const held = (slope: number): number =>
    rise > 0 ? Math.min(Math.max(slope, 0), most) : Math.max(Math.min(slope, 0), most)
  return at.end * rise + at.startSlope * held(slopeBefore) + at.endSlope * held(slopeAfter)
}
