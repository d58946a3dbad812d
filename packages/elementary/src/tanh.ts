/*
 * After fdlibm 5.3 (s_tanh.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { expm1 } from './exponential.ts'

/** Hyperbolic tangent, to about 1 unit in the last place; the sign of zero is kept, NaN for NaN. */
export function tanh(x: number): number {
  if (x < 0) return -ofPositive(-x)
  return x > 0 ? ofPositive(x) : x
}

function ofPositive(x: number): number {
  if (x >= 22) return 1
  if (x < 2e-17) return x
  if (x >= 1) return 1 - 2 / (expm1(2 * x) + 2)
  const t = expm1(-2 * x)
  return -t / (t + 2)
}
