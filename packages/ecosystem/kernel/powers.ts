/*
 * After fdlibm 5.3 (e_pow.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { powerOfTwo, remez } from './exponent'
import { add, both, div, mul, sub, where } from './pair'

/**
 * Whether `powers` can tell both: ordinary bases, and exponents that are none of those for which there is a short way.
 * Others are rare, and go one by one (power.ts).
 */
export function isPlain(x: v128, y: v128): bool {
  const base = v128.and(f64x2.gt(x, both(LEAST_BASE)), f64x2.lt(x, both(LARGEST_BASE)))
  const exponent = v128.and(f64x2.lt(f64x2.abs(y), both(LARGEST)), f64x2.ne(y, both(0)))
  const short = v128.or(
    v128.or(f64x2.eq(y, both(1)), f64x2.eq(y, both(2))),
    v128.or(f64x2.eq(y, both(-1)), f64x2.eq(y, both(0.5))),
  )
  return i64x2.all_true(v128.andnot(v128.and(v128.and(base, f64x2.ne(x, both(1))), exponent), short))
}
const LEAST_BASE: f64 = 1e-300
const LARGEST_BASE: f64 = 1e300
const LARGEST: f64 = 1e6
/** Powers of two up to this are normal numbers. */
const PLAIN: f64 = 1000

const TWO_52: f64 = 4503599627370496
const LN_2: f64 = Math.LN2

/** x to the power y with the operations of `general` of power.ts in their order; no numbers where one leaves the plain. */
export function powers(x: v128, y: v128): v128 {
  const mantissa = v128.and(x, i64x2.splat(0x000fffffffffffff))
  const upper = i64x2.ge_s(mantissa, i64x2.splat(0x000bb67a00000000))
  const middle = v128.andnot(i64x2.ge_s(mantissa, i64x2.splat(0x0003988f00000000)), upper)
  const biased = sub(v128.or(i64x2.shr_u(x, 52), both(TWO_52)), both(TWO_52 + 1023))
  const n = add(biased, v128.and(upper, both(1)))
  const fraction = v128.or(mantissa, where(upper, both(0.5), both(1)))
  const against = where(middle, both(1.5), both(1))
  const log2High = v128.and(middle, both(0.5849624872207642))
  const log2Low = v128.and(middle, both(1.350039202129749e-8))

  const difference = sub(fraction, against)
  const whole = add(fraction, against)
  const inverse = div(both(1), whole)
  const s = mul(difference, inverse)
  const sHigh = leadingBits(s)
  const sumHigh = leadingBits(whole)
  const sumLow = sub(fraction, sub(sumHigh, against))
  const sLow = mul(inverse, sub(sub(difference, mul(sHigh, sumHigh)), mul(sHigh, sumLow)))
  const s2 = mul(s, s)
  let series = add(both(0.23066074577556175), mul(s2, both(0.20697501780033842)))
  series = add(both(0.272728123808534), mul(s2, series))
  series = add(both(0.33333332981837743), mul(s2, series))
  series = add(both(0.4285714285785502), mul(s2, series))
  series = add(both(0.5999999999999946), mul(s2, series))
  const r = add(mul(mul(s2, s2), series), mul(sLow, add(sHigh, s)))
  const square = mul(sHigh, sHigh)
  const tHigh = leadingBits(add(add(both(3), square), r))
  const tLow = sub(r, sub(sub(tHigh, both(3)), square))
  const u = mul(sHigh, tHigh)
  const v = add(mul(sLow, tHigh), mul(tLow, s))
  const pHigh = leadingBits(add(u, v))
  const pLow = sub(v, sub(pHigh, u))
  const zHigh = mul(both(0.9617967009544373), pHigh)
  const zLow = add(add(mul(both(-7.028461650952758e-9), pHigh), mul(pLow, both(0.9617966939259756))), log2Low)
  const high = leadingBits(add(add(add(zHigh, zLow), log2High), n))
  return twoTo(y, high, sub(zLow, sub(sub(sub(high, n), log2High), zHigh)))
}

/** 2 to the power y × (high + low). */
function twoTo(y: v128, high: v128, low: v128): v128 {
  const yHigh = leadingBits(y)
  const lowPart = add(mul(sub(y, yHigh), high), mul(y, low))
  const highPart = mul(yHigh, high)
  const z = add(lowPart, highPart)
  const n = f64x2.floor(add(z, both(0.5)))
  const rest = sub(highPart, n)
  const t = leadingBits(add(lowPart, rest))
  const u = mul(t, both(0.6931471824645996))
  const v = add(mul(sub(lowPart, sub(t, rest)), both(LN_2)), mul(t, both(-1.904654299957768e-9)))
  const sum = add(u, v)
  const w = sub(v, sub(sum, u))
  const c = remez(sum)
  const off = sub(div(mul(sum, c), sub(c, both(2))), add(w, mul(sum, w)))
  const power = mul(sub(both(1), sub(off, sum)), powerOfTwo(i32x4.trunc_sat_f64x2_s_zero(n)))
  return where(f64x2.lt(f64x2.abs(z), both(PLAIN)), power, both(NaN))
}

/** The upper 26 bits of x (Veltkamp's split). */
function leadingBits(x: v128): v128 {
  const c = mul(both(134217729), x)
  return sub(c, sub(c, x))
}
