/*
 * After Cephes Math Library 2.8 (tanh.c).
 * Copyright 1984, 1987, 1989, 2000 by Stephen L. Moshier, who lets anyone use it as they like.
 */

import { exp } from './exponential.ts'

/** From here on by the exponential, below by a quotient of polynomials. */
const BY_EXPONENTIAL = 0.625
/** From here on 1 is the nearest double. */
const ONE = 22

/** Hyperbolic tangent, to about 1 unit in the last place; the sign of zero is kept, NaN for NaN. */
export function tanh(x: number): number {
  if (x === 0) return x
  const size = Math.abs(x)
  if (size < BY_EXPONENTIAL) return byQuotient(x)
  if (size >= ONE) return x < 0 ? -1 : 1
  const result = 1 - 2 / (exp(2 * size) + 1)
  return x < 0 ? -result : result
}

function byQuotient(x: number): number {
  const z = x * x
  const over = (-0.9643991794250522 * z - 99.28772310019185) * z - 1614.6876844170845
  const under = ((z + 112.81167849163293) * z + 2235.4883906010045) * z + 4844.063053251255
  return x + x * z * (over / under)
}
