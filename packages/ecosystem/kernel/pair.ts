/** Arithmetic on pairs: the same number of two members side by side, each as if it were alone. */

export function both(value: f64): v128 {
  return f64x2.splat(value)
}

export function add(a: v128, b: v128): v128 {
  return f64x2.add(a, b)
}

export function sub(a: v128, b: v128): v128 {
  return f64x2.sub(a, b)
}

export function mul(a: v128, b: v128): v128 {
  return f64x2.mul(a, b)
}

export function div(a: v128, b: v128): v128 {
  return f64x2.div(a, b)
}

export function negative(a: v128): v128 {
  return f64x2.neg(a)
}

/** `yes` in the members where the mask is set, `no` in the others. */
export function where(mask: v128, yes: v128, no: v128): v128 {
  return v128.bitselect(yes, no, mask)
}

/** Adds to what lies in memory. */
export function gain(at: usize, amount: v128): void {
  v128.store(at, f64x2.add(v128.load(at), amount))
}

/** A number of each member. */
export function pair(first: f64, second: f64): v128 {
  return f64x2.replace_lane(f64x2.splat(first), 1, second)
}

/** All bits of the members that are meant. */
export function mask(first: bool, second: bool): v128 {
  return i64x2.replace_lane(i64x2.splat(first ? -1 : 0), 1, second ? -1 : 0)
}
