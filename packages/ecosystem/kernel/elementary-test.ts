import { exp as expOf, pow as powOf, tanh as tanhOf } from './elementary'

/** The functions for single numbers, for the test that holds them to `@holdfast/elementary`. */
export function exp(x: f64): f64 {
  return f64x2.extract_lane(expOf(f64x2.replace_lane(f64x2.splat(0.5), 1, x)), 1)
}

export function tanh(x: f64): f64 {
  return f64x2.extract_lane(tanhOf(f64x2.replace_lane(f64x2.splat(0.5), 1, x)), 1)
}

export function pow(x: f64, y: f64): f64 {
  return f64x2.extract_lane(powOf(f64x2.replace_lane(f64x2.splat(0.5), 1, x), f64x2.splat(y)), 1)
}
