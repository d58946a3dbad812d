/*
 * After fdlibm 5.3 (e_exp.c, s_expm1.c, s_tanh.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

/**
 * The functions of `@holdfast/elementary` for pairs: the same operations in the same order, with choices in
 * place of branches, so that the bits are the same. A test holds them so.
 */

import { add, both, div, mul, negative, sub, where } from './pair'
import { power } from './power'

const LN2_HIGH: f64 = 0.6931471803691238
const LN2_LOW: f64 = 1.9082149292705877e-10
const PER_LN2: f64 = Math.LOG2E
const HALF_LN2: f64 = 0.34657359027997264
const LARGEST_EXPONENT: f64 = 709.782712893384
const LEAST_EXPONENT: f64 = -745.1332191019411

/** e to the power x. */
export function exp(x: v128): v128 {
  const k = periods(x)
  const high = sub(x, mul(k, both(LN2_HIGH)))
  const low = mul(k, both(LN2_LOW))
  const reduced = sub(high, low)
  const c = remez(reduced)
  const fraction = div(mul(reduced, c), sub(both(2), c))
  const result = scaled(sub(both(1), sub(sub(low, fraction), high)), k)
  const held = where(f64x2.gt(x, both(LARGEST_EXPONENT)), both(Infinity), result)
  return where(f64x2.lt(x, both(LEAST_EXPONENT)), both(0), held)
}

/** Whole multiples of ln 2 that a number is brought near zero by. */
function periods(x: v128): v128 {
  const k = f64x2.floor(add(mul(both(PER_LN2), x), both(0.5)))
  return v128.and(k, f64x2.gt(f64x2.abs(x), both(HALF_LN2)))
}

function remez(x: v128): v128 {
  const t = mul(x, x)
  let sum = add(both(-0.0000016533902205465252), mul(t, both(4.1381367970572385e-8)))
  sum = add(both(0.00006613756321437934), mul(t, sum))
  sum = add(both(-0.0027777777777015593), mul(t, sum))
  sum = add(both(0.16666666666666602), mul(t, sum))
  return sub(x, mul(t, sum))
}

/** y × 2^k, rounded once: in two factors, of which the first keeps the product normal. */
function scaled(y: v128, k: v128): v128 {
  const n = i32x4.trunc_sat_f64x2_s_zero(k)
  const first = i32x4.shr_s(n, 1)
  return mul(mul(y, powerOfTwo(first)), powerOfTwo(i32x4.sub(n, first)))
}

function powerOfTwo(n: v128): v128 {
  return i64x2.shl(i64x2.extend_low_i32x4_s(i32x4.add(n, i32x4.splat(1023))), 52)
}

/** Hyperbolic tangent. */
export function tanh(x: v128): v128 {
  const a = f64x2.abs(x)
  const large = f64x2.ge(a, both(1))
  const t = expm1(where(large, mul(both(2), a), mul(both(-2), a)))
  const more = add(t, both(2))
  let result = where(large, sub(both(1), div(both(2), more)), div(negative(t), more))
  result = where(f64x2.ge(a, both(22)), both(1), result)
  result = where(f64x2.lt(a, both(2e-17)), a, result)
  return v128.or(result, v128.and(x, both(-0.0)))
}

/** e to the power x, less 1, for x from -2 to 44: what tanh asks for. */
function expm1(x: v128): v128 {
  const k = periods(x)
  const high = sub(x, mul(k, both(LN2_HIGH)))
  const low = mul(k, both(LN2_LOW))
  const r = sub(high, low)
  const lost = sub(sub(high, r), low)
  const half = mul(both(0.5), r)
  const square = mul(r, half)
  let sum = add(both(0.000004008217827329362), mul(square, both(-2.0109921818362437e-7)))
  sum = add(both(-0.0000793650757867488), mul(square, sum))
  sum = add(both(0.0015873015872548146), mul(square, sum))
  sum = add(both(-0.03333333333333313), mul(square, sum))
  const r1 = add(both(1), mul(square, sum))
  const t = sub(both(3), mul(r1, half))
  const e = mul(square, div(sub(r1, t), sub(both(6), mul(r, t))))
  const correction = sub(sub(mul(r, sub(e, lost)), lost), square)
  const rest = sub(correction, r)
  const lessened = scaled(both(1), negative(k))
  const plain = sub(r, sub(mul(r, e), square))
  const below = sub(mul(both(0.5), sub(r, correction)), both(0.5))
  const above = where(
    f64x2.lt(r, both(-0.25)),
    mul(both(-2), sub(correction, add(r, both(0.5)))),
    add(both(1), mul(both(2), sub(r, correction))),
  )
  const outer = sub(scaled(sub(both(1), rest), k), both(1))
  const small = scaled(sub(sub(both(1), lessened), rest), k)
  const great = scaled(add(sub(r, add(correction, lessened)), both(1)), k)
  let result = where(f64x2.lt(k, both(20)), small, great)
  result = where(v128.or(f64x2.le(k, both(-2)), f64x2.gt(k, both(56))), outer, result)
  result = where(f64x2.eq(k, both(1)), above, result)
  result = where(f64x2.eq(k, both(-1)), below, result)
  return where(f64x2.eq(k, both(0)), plain, result)
}

/** x to the power y, member by member. */
export function pow(x: v128, y: v128): v128 {
  const first = power(f64x2.extract_lane(x, 0), f64x2.extract_lane(y, 0))
  const second = power(f64x2.extract_lane(x, 1), f64x2.extract_lane(y, 1))
  return f64x2.replace_lane(f64x2.splat(first), 1, second)
}
