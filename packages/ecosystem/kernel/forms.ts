/**
 * The forms of `src/forms` for pairs: the same operations in the same order, with choices in place of
 * branches, so that the bits are the same. The test of every declaration holds them so.
 */

import { exp, pow, tanh } from './elementary'
import { add, both, div, mul, negative, sub, where } from './pair'

/** A value that is asked for only where a mask is set, and zero elsewhere. */
function only(mask: v128, value: v128): v128 {
  return v128.and(mask, value)
}

export function monod(concentration: v128, halfSaturation: v128): v128 {
  return part(concentration, add(concentration, halfSaturation))
}

export function q10(perTenDegrees: v128, temperature: v128): v128 {
  return pow(perTenDegrees, div(sub(temperature, both(25)), both(10)))
}

export function warmth(perTenDegrees: v128, temperature: v128, best: v128): v128 {
  const colder = q10(perTenDegrees, sub(add(both(25), temperature), best))
  return where(f64x2.lt(temperature, best), colder, both(1))
}

export function droop(quota: v128, leastQuota: v128, fed: v128): v128 {
  const between = div(sub(both(1), div(leastQuota, quota)), sub(both(1), div(leastQuota, fed)))
  const capped = where(f64x2.ge(quota, fed), both(1), between)
  return where(f64x2.le(quota, leastQuota), both(0), capped)
}

/** Below this the Freundlich isotherm is a line to zero, µmol/L. */
const LINEAR_BELOW: f64 = 0.05

export function freundlich(concentration: v128, reference: v128, exponent: v128): v128 {
  const high = f64x2.ge(concentration, both(LINEAR_BELOW))
  const load = pow(div(where(high, concentration, both(LINEAR_BELOW)), reference), exponent)
  const low = div(mul(load, concentration), both(LINEAR_BELOW))
  return only(f64x2.gt(concentration, both(0)), where(high, load, low))
}

export function lightSaturation(light: v128, saturation: v128): v128 {
  return tanh(div(light, saturation))
}

export function selfShaded(light: v128, depth: v128): v128 {
  const thin = f64x2.lt(depth, both(1e-6))
  if (i64x2.all_true(thin)) return light
  const mean = div(mul(light, sub(both(1), exp(negative(depth)))), depth)
  return where(thin, light, mean)
}

export function throughCanopy(depth: v128): v128 {
  const shaded = f64x2.gt(depth, both(0))
  // Most stands have nothing above them, and the exponential is dear.
  if (!v128.any_true(shaded)) return both(1)
  return where(shaded, exp(negative(depth)), both(1))
}

export function filmCover(mass: v128, hiding: v128): v128 {
  return sub(both(1), exp(div(mul(both(-3), mass), hiding)))
}

export function inhibited(concentration: v128, halfEffect: v128): v128 {
  return div(halfEffect, add(halfEffect, concentration))
}

export function fallingLine(height: v128, full: v128, limit: v128, leastShare: v128): v128 {
  const line = sub(both(1), div(mul(sub(both(1), leastShare), sub(height, full)), sub(limit, full)))
  const above = where(f64x2.ge(height, limit), leastShare, line)
  return where(f64x2.le(height, full), both(1), above)
}

export function positive(value: v128): v128 {
  return f64x2.pmax(both(0), value)
}

export function part(value: v128, whole: v128): v128 {
  return only(f64x2.gt(whole, both(0)), div(value, whole))
}

export function least(a: v128, b: v128): v128 {
  return f64x2.pmin(b, a)
}

export function most(a: v128, b: v128): v128 {
  return f64x2.pmax(b, a)
}
