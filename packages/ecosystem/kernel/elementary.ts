/*
 * After fdlibm 5.3 (e_exp.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

/**
 * The functions of `@holdfast/elementary` for pairs: the same operations in the same order, with choices in
 * place of branches, so that the bits are the same. A test holds them so.
 */

import { powerOfTwo, remez } from './exponent'
import { add, both, div, mul, sub, where } from './pair'
import { power } from './power'
import { isPlain, powers } from './powers'

const LN2_HIGH: f64 = 0.6931471803691238
const LN2_LOW: f64 = 1.9082149292705877e-10
const PER_LN2: f64 = Math.LOG2E
const HALF_LN2: f64 = 0.34657359027997264
const LARGEST_EXPONENT: f64 = 709.782712893384
const LEAST_EXPONENT: f64 = -745.1332191019411
/** Exponents up to this need one factor only. */
const PLAIN: f64 = 700

/** e to the power x. */
export function exp(x: v128): v128 {
  const k = periods(x)
  const high = sub(x, mul(k, both(LN2_HIGH)))
  const low = mul(k, both(LN2_LOW))
  const reduced = sub(high, low)
  const c = remez(reduced)
  const fraction = div(mul(reduced, c), sub(both(2), c))
  const mantissa = sub(both(1), sub(sub(low, fraction), high))
  // The power is a normal number, and the product rounded by nothing.
  if (!v128.any_true(f64x2.gt(f64x2.abs(x), both(PLAIN))))
    return mul(mantissa, powerOfTwo(i32x4.trunc_sat_f64x2_s_zero(k)))
  const result = scaled(mantissa, k)
  const held = where(f64x2.gt(x, both(LARGEST_EXPONENT)), both(Infinity), result)
  return where(f64x2.lt(x, both(LEAST_EXPONENT)), both(0), held)
}

/** Whole multiples of ln 2 that a number is brought near zero by. */
function periods(x: v128): v128 {
  const k = f64x2.floor(add(mul(both(PER_LN2), x), both(0.5)))
  return v128.and(k, f64x2.gt(f64x2.abs(x), both(HALF_LN2)))
}

/** y × 2^k, rounded once: in two factors, of which the first keeps the product normal. */
function scaled(y: v128, k: v128): v128 {
  const n = i32x4.trunc_sat_f64x2_s_zero(k)
  const first = i32x4.shr_s(n, 1)
  return mul(mul(y, powerOfTwo(first)), powerOfTwo(i32x4.sub(n, first)))
}

/**
 * Hyperbolic tangent, after Cephes Math Library 2.8 (tanh.c, copyright 1984 to 2000 by Stephen L. Moshier, who
 * lets anyone use it as they like).
 */
export function tanh(x: v128): v128 {
  const size = f64x2.abs(x)
  const sign = v128.and(x, both(-0.0))
  const near = f64x2.lt(size, both(0.625))
  if (i64x2.all_true(near)) return v128.or(byQuotient(x), sign)
  const away = sub(both(1), div(both(2), add(exp(mul(both(2), size)), both(1))))
  const large = where(f64x2.ge(size, both(22)), both(1), away)
  if (!v128.any_true(near)) return v128.or(large, sign)
  return v128.or(where(near, byQuotient(x), large), sign)
}

function byQuotient(x: v128): v128 {
  const z = mul(x, x)
  const over = sub(
    mul(sub(mul(both(-0.9643991794250522), z), both(99.28772310019185)), z),
    both(1614.6876844170845),
  )
  const under = add(
    mul(add(mul(add(z, both(112.81167849163293)), z), both(2235.4883906010045)), z),
    both(4844.063053251255),
  )
  return add(x, mul(mul(x, z), div(over, under)))
}

/** x to the power y. */
export function pow(x: v128, y: v128): v128 {
  if (isPlain(x, y)) {
    const together = powers(x, y)
    if (i64x2.all_true(f64x2.eq(together, together))) return together
  }
  const first = power(f64x2.extract_lane(x, 0), f64x2.extract_lane(y, 0))
  const second = power(f64x2.extract_lane(x, 1), f64x2.extract_lane(y, 1))
  return f64x2.replace_lane(f64x2.splat(first), 1, second)
}
