/*
 * After fdlibm 5.3 (e_log.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { highWord } from './high-word.ts'
import { powerOfTwo } from './powers-of-two.ts'

const LN2_HIGH = 0.6931471803691238
const LN2_LOW = 1.9082149292705877e-10

/**
 * Natural logarithm, to better than 1 unit in the last place.
 *
 * @returns -Infinity for 0, NaN below 0 and for NaN
 */
export function ln(x: number): number {
  if (!(x > 0)) return x === 0 ? Number.NEGATIVE_INFINITY : Number.NaN
  if (x === Number.POSITIVE_INFINITY) return x
  let exponent = 0
  let normal = x
  if (x < 2.2250738585072014e-308) {
    exponent = -54
    normal = x * powerOfTwo(54)
  }
  const word = highWord(normal)
  const mantissa = word & 0x000fffff
  // 1 where the mantissa is above √2: the fraction then falls within [√½, √2]
  const above = (mantissa + 0x95f64) >> 20
  const shift = (word >> 20) - 1023 + above
  exponent += shift
  const f = normal * powerOfTwo(-shift) - 1
  if (((2 + mantissa) & 0x000fffff) < 3) {
    const R = f * f * (0.5 - 0.3333333333333333 * f)
    return exponent === 0 ? f - R : exponent * LN2_HIGH - (R - exponent * LN2_LOW - f)
  }
  const s = f / (2 + f)
  const z = s * s
  const w = z * z
  const even = w * (0.3999999999940942 + w * (0.22222198432149784 + w * 0.15313837699209373))
  const odd =
    z * (0.6666666666666735 + w * (0.2857142874366239 + w * (0.1818357216161805 + w * 0.14798198605116586)))
  const R = odd + even
  if (((mantissa - 0x6147a) | (0x6b851 - mantissa)) > 0) {
    const half = 0.5 * f * f
    if (exponent === 0) return f - (half - s * (half + R))
    return exponent * LN2_HIGH - (half - (s * (half + R) + exponent * LN2_LOW) - f)
  }
  if (exponent === 0) return f - s * (f - R)
  return exponent * LN2_HIGH - (s * (f - R) - exponent * LN2_LOW - f)
}
