import { start, tolerance } from './memory'
import { add, mul } from './pair'

/** What one tolerance is, of a state of this size. */
export function weight(strictness: v128, relative: v128, i: usize): v128 {
  const absolute = mul(v128.load(tolerance + i), strictness)
  return add(absolute, mul(relative, f64x2.abs(v128.load(start + i))))
}
