/*
 * After fdlibm 5.3 (e_exp.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { scaled } from './powers-of-two.ts'

const LN2_HIGH = 0.6931471803691238
const LN2_LOW = 1.9082149292705877e-10
const PER_LN2 = Math.LOG2E
const HALF_LN2 = 0.34657359027997264
const LARGEST_EXPONENT = 709.782712893384
const LEAST_EXPONENT = -745.1332191019411

/**
 * e to the power x, to better than 1 unit in the last place.
 *
 * @returns Infinity above 709.78, 0 below -745.13, NaN for NaN
 */
export function exp(x: number): number {
  if (x > LARGEST_EXPONENT) return Number.POSITIVE_INFINITY
  if (x < LEAST_EXPONENT) return 0
  if (x <= HALF_LN2 && x >= -HALF_LN2) {
    const c = remez(x)
    return 1 - ((x * c) / (c - 2) - x)
  }
  if (Number.isNaN(x)) return x
  const k = Math.floor(PER_LN2 * x + 0.5)
  const high = x - k * LN2_HIGH
  const low = k * LN2_LOW
  const reduced = high - low
  const c = remez(reduced)
  return scaled(1 - (low - (reduced * c) / (2 - c) - high), k)
}

/** x less t × a polynomial in t = x²: Remez's fit of x (eˣ + 1) / (eˣ - 1) - 2, |x| up to half ln 2. */
export function remez(x: number): number {
  const t = x * x
  return (
    x -
    t *
      (0.16666666666666602 +
        t *
          (-0.0027777777777015593 +
            t * (0.00006613756321437934 + t * (-0.0000016533902205465252 + t * 4.1381367970572385e-8))))
  )
}
