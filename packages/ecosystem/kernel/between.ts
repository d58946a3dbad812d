import {
  all,
  forcing,
  quick,
  quickSlope,
  quickSlopeStart,
  quickStart,
  slope,
  slopeStart,
  stage,
  start,
} from './memory'
import { add, both, div, mask, mul, negative, pair, sub, where } from './pair'

/** What counts the rise of a step and the slopes at its ends, at a share of the step. */
let at: v128 = both(0)
let onEnd: v128 = both(0)
let onStartSlope: v128 = both(0)
let onEndSlope: v128 = both(0)
let steepest: v128 = both(0)

function place(days: v128, share: v128): void {
  const rest = sub(both(1), share)
  at = share
  onEnd = mul(mul(share, share), sub(both(3), mul(both(2), share)))
  onStartSlope = mul(mul(mul(share, rest), rest), days)
  onEndSlope = mul(mul(mul(share, share), negative(rest)), days)
  steepest = div(both(3), days)
}

/**
 * The cubic through both ends and their slopes. Slopes are held to what keeps the cubic between its ends
 * (Fritsch & Carlson 1980, SIAM J Numer Anal 17:238; as recalled): in a long step over a fast balance the
 * slope at an end is noise times the fastest rate, and would overshoot.
 */
function cubic(before: v128, after: v128, slopeBefore: v128, slopeAfter: v128): v128 {
  const rise = sub(after, before)
  const most = mul(steepest, rise)
  const low = f64x2.pmin(most, both(0))
  const high = f64x2.pmax(most, both(0))
  const startSlope = f64x2.pmax(low, f64x2.pmin(high, slopeBefore))
  const endSlope = f64x2.pmax(low, f64x2.pmin(high, slopeAfter))
  const risen = add(add(mul(onEnd, rise), mul(onStartSlope, startSlope)), mul(onEndSlope, endSlope))
  // At the end of the step the states are those at its end, to the bit.
  return where(f64x2.ge(at, both(1)), after, add(before, risen))
}

/** States inside the step but for the quick ones, written for the members that are meant. */
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
  place(pair(days0, days1), pair(share0, share1))
  for (let i = quick; i < all; i += 16) {
    const now = cubic(
      v128.load(start + i),
      v128.load(stage + i),
      v128.load(slopeStart + i),
      v128.load(slope + i),
    )
    v128.store(into + i, where(these, now, v128.load(into + i)))
  }
}

/** Quick states inside a short step; one that lies a hair below zero within a step is read as zero. */
export function betweenQuick(
  into: usize,
  first: bool,
  second: bool,
  days0: f64,
  days1: f64,
  share0: f64,
  share1: f64,
): void {
  const these = mask(first, second)
  place(pair(days0, days1), pair(share0, share1))
  for (let i: usize = 0; i < quick; i += 16) {
    const forced = v128.load(forcing + i)
    const now = cubic(
      v128.load(quickStart + i),
      v128.load(stage + i),
      add(v128.load(quickSlopeStart + i), forced),
      add(v128.load(quickSlope + i), forced),
    )
    v128.store(into + i, where(these, f64x2.pmax(both(0), now), v128.load(into + i)))
  }
}
