/**
 * The implicit part of a short step. Net rates `k` of the quick states become those that solve
 * `k = rates + what flows answer to k`: a flow answers to what comes where it begins, in proportion to what is there,
 * and one that goes both ways, an exchange, by its derivatives at both ends. So an account that empties within
 * minutes, or two that find their balance so, ask for no short steps. An answer is a transfer too: what leaves one end
 * arrives at the other.
 */

import {
  damping,
  exchangeAnswers,
  exchanges,
  farOutflows,
  hubOutflows,
  implicitDays,
  outflows,
  overPulls,
  pullsStart,
  quick,
  quickFlowsStart,
  quickShares,
  quickStart,
  quickWholeFlows,
  released,
  tolerance,
} from './memory'
import { add, both, div, gain, mul, sub } from './pair'

/** Of a tolerance: what holds less empties no faster than this would. */
const LEAST: f64 = 1e-6
/** Bytes of a line in the list of exchanges. */
const EXCHANGE = 12

/**
 * γ of the method, by what an account's fastest decay makes of the step: the one with which a linear decay ends where
 * it does in truth, 0.03 of its beginning off at most. It is (3 - √3) / 6 for slow ones, which gives them the third
 * order, and 1 - 1/√2 for fast ones, which ends them at their balance.
 */
function gamma(decays: v128): v128 {
  const between = add(both(FOR_SLOW * HALFWAY), mul(both(FOR_FAST), decays))
  return div(between, add(both(HALFWAY), decays))
}
const FOR_SLOW: f64 = 0.21132486540518713
const FOR_FAST: f64 = 0.2928932188134525
const HALFWAY: f64 = 5

/** Works out how the flows answer in a step from where they are now. */
export function findAnswers(days: v128): void {
  for (let i: usize = 0; i < quick; i += 16) v128.store(damping + i, both(0))
  let line = exchanges
  for (let p: usize = 0; p < overPulls; p += 32) {
    gain(damping + load<i32>(line, 4), v128.load(pullsStart + p))
    gain(damping + load<i32>(line, 8), v128.load(pullsStart + p, 16))
    line += EXCHANGE
  }
  findShares(outflows, days)
  findShares(hubOutflows, days)
  findShares(farOutflows, days)
  line = exchanges
  for (let p: usize = 0; p < overPulls; p += 32) {
    const out = mul(v128.load(implicitDays + load<i32>(line, 4)), v128.load(pullsStart + p))
    const back = mul(v128.load(implicitDays + load<i32>(line, 8)), v128.load(pullsStart + p, 16))
    v128.store(exchangeAnswers + p, out)
    v128.store(exchangeAnswers + p, back, 16)
    const far = damping + load<i32>(line, 8)
    gain(far, back)
    // What comes back of what goes out damps less.
    gain(damping + load<i32>(line, 4), mul(out, sub(both(1), div(back, v128.load(far)))))
    line += EXCHANGE
  }
  // What nothing leaves is not damped.
  for (let i: usize = 0; i < quick; i += 16)
    v128.store(damping + i, div(both(1), f64x2.pmax(both(1), v128.load(damping + i))))
}

/** Makes net rates implicit: account by account, those at which exchanges begin after the others, their far ends last. */
export function makeImplicit(rates: usize): void {
  release(outflows, rates)
  let line = exchanges
  for (let p: usize = 0; p < overPulls; p += 32) {
    const far = load<i32>(line, 8)
    const comesBack = mul(v128.load(exchangeAnswers + p, 16), v128.load(damping + far))
    gain(rates + load<i32>(line, 4), mul(comesBack, v128.load(rates + far)))
    line += EXCHANGE
  }
  release(hubOutflows, rates)
  line = exchanges
  for (let p: usize = 0; p < overPulls; p += 32) {
    const goesOut = mul(v128.load(exchangeAnswers + p), v128.load(released + load<i32>(line, 4)))
    gain(rates + load<i32>(line, 8), goesOut)
    line += EXCHANGE
  }
  release(farOutflows, rates)
}

/** Adds what flows answered to the rates last made implicit to the whole flows of the short step. */
export function bookAnswers(days: v128): void {
  bookShares(outflows, days)
  bookShares(hubOutflows, days)
  bookShares(farOutflows, days)
  let line = exchanges
  for (let p: usize = 0; p < overPulls; p += 32) {
    const out = mul(v128.load(exchangeAnswers + p), v128.load(released + load<i32>(line, 4)))
    const back = mul(v128.load(exchangeAnswers + p, 16), v128.load(released + load<i32>(line, 8)))
    gain(quickWholeFlows + load<i32>(line), mul(days, sub(out, back)))
    line += EXCHANGE
  }
}

/** Expects how fast exchanges make the accounts decay where the damping is to be. */
function findShares(list: usize, days: v128): void {
  for (let at = list; load<i32>(at) >= 0; ) {
    const state = load<i32>(at)
    const end = endOf(at)
    const held = f64x2.pmax(mul(both(LEAST), v128.load(tolerance + state)), v128.load(quickStart + state))
    let leaving = both(0)
    const first = at + 8
    for (at = first; at < end; at += 8)
      leaving = add(leaving, f64x2.pmax(both(0), v128.load(quickFlowsStart + load<i32>(at))))
    const fastest = add(v128.load(damping + state), div(leaving, held))
    const implicit = mul(days, gamma(mul(days, fastest)))
    v128.store(implicitDays + state, implicit)
    const per = div(implicit, held)
    v128.store(damping + state, add(both(1), mul(per, leaving)))
    for (at = first; at < end; at += 8)
      v128.store(
        quickShares + load<i32>(at),
        mul(per, f64x2.pmax(both(0), v128.load(quickFlowsStart + load<i32>(at)))),
      )
  }
}

function release(list: usize, rates: usize): void {
  for (let at = list; load<i32>(at) >= 0; ) {
    const state = load<i32>(at)
    const end = endOf(at)
    const damped = mul(v128.load(rates + state), v128.load(damping + state))
    v128.store(rates + state, damped)
    v128.store(released + state, damped)
    for (at += 8; at < end; at += 8)
      gain(rates + load<i32>(at, 4), mul(v128.load(quickShares + load<i32>(at)), damped))
  }
}

function bookShares(list: usize, days: v128): void {
  for (let at = list; load<i32>(at) >= 0; ) {
    const whole = mul(days, v128.load(released + load<i32>(at)))
    const end = endOf(at)
    for (at += 8; at < end; at += 8)
      gain(quickWholeFlows + load<i32>(at), mul(v128.load(quickShares + load<i32>(at)), whole))
  }
}

/** Where the next account begins in a list: each is its offset, a number of flows, and of each flow its own and its end's. */
function endOf(at: usize): usize {
  return at + 8 + 8 * load<i32>(at, 4)
}
