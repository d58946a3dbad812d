/*
 * After fdlibm 5.3 (e_exp.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { add, both, mul, sub } from './pair'

/** The rational approximation of e_exp.c, for what is near zero. */
export function remez(x: v128): v128 {
  const t = mul(x, x)
  let sum = add(both(-0.0000016533902205465252), mul(t, both(4.1381367970572385e-8)))
  sum = add(both(0.00006613756321437934), mul(t, sum))
  sum = add(both(-0.0027777777777015593), mul(t, sum))
  sum = add(both(0.16666666666666602), mul(t, sum))
  return sub(x, mul(t, sum))
}

/** 2^n, for the first two numbers, from -1022 to 1023. */
export function powerOfTwo(n: v128): v128 {
  return i64x2.shl(i64x2.extend_low_i32x4_s(i32x4.add(n, i32x4.splat(1023))), 52)
}
