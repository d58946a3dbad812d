/*
 * After fdlibm 5.3 (e_pow.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

const LOG2_E: f64 = Math.LOG2E
const LN_2: f64 = Math.LN2
const TWO_31: f64 = 2147483648
const TWO_32: f64 = 4294967296
const TWO_53: f64 = 9007199254740992.0
const TWO_64: f64 = TWO_32 * TWO_32

/** `pow` of `@holdfast/elementary` to the bit, for a base that is not below zero. */
export function power(x: f64, y: f64): f64 {
  if (y === 0) return 1
  if (Number.isNaN(x) || Number.isNaN(y) || x < 0) return NaN
  if (y === 1) return x
  if (y === 2) return x * x
  if (y === -1) return 1 / x
  if (y === Infinity) return x === 1 ? NaN : x > 1 ? y : 0
  if (y === -Infinity) return x === 1 ? NaN : x > 1 ? 0 : -y
  if (x === 0 || x === Infinity) return (x === 0) === y > 0 ? 0 : Infinity
  if (y === 0.5) return Math.sqrt(x)
  if (x === 1) return 1
  if (y > TWO_31 || y < -TWO_31) {
    const farFromOne = x < 0.9999990463256836 || x > 1.0000009536743164
    if (farFromOne || y > TWO_64 || y < -TWO_64) return x < 1 === y > 0 ? 0 : Infinity
    return nearOne(x, y)
  }
  return general(x, y)
}

/** |x - 1| below 2⁻²⁰: log2 x by its series. */
function nearOne(x: f64, y: f64): f64 {
  const t = x - 1
  const w = t * t * (0.5 - t * (0.3333333333333333 - t * 0.25))
  const u = 1.4426950216293335 * t
  const v = t * 1.9259629911266175e-8 - w * LOG2_E
  const high = leadingBits(u + v)
  return twoTo(y, high, v - (high - u))
}

function general(x: f64, y: f64): f64 {
  let n: f64 = 0
  let normal = x
  if (x < 2.2250738585072014e-308) {
    n = -53
    normal = x * TWO_53
  }
  const word = i32(reinterpret<u64>(normal) >> 32)
  const mantissa = word & 0x000fffff
  let shift = (word >> 20) - 1023
  let against: f64 = 1
  let log2High: f64 = 0
  let log2Low: f64 = 0
  if (mantissa >= 0xbb67a) shift += 1
  else if (mantissa > 0x3988e) {
    against = 1.5
    log2High = 0.5849624872207642
    log2Low = 1.350039202129749e-8
  }
  n += f64(shift)
  // 2^1024 is no number, so what is next to the greatest is scaled in two.
  const fraction =
    shift > 1000 ? normal * powerOfTwo(-1000) * powerOfTwo(1000 - shift) : normal * powerOfTwo(-shift)

  const difference = fraction - against
  const inverse = 1 / (fraction + against)
  const s = difference * inverse
  const sHigh = leadingBits(s)
  const sumHigh = leadingBits(fraction + against)
  const sumLow = fraction - (sumHigh - against)
  const sLow = inverse * (difference - sHigh * sumHigh - sHigh * sumLow)
  const s2 = s * s
  const r =
    s2 *
      s2 *
      (0.5999999999999946 +
        s2 *
          (0.4285714285785502 +
            s2 *
              (0.33333332981837743 +
                s2 * (0.272728123808534 + s2 * (0.23066074577556175 + s2 * 0.20697501780033842))))) +
    sLow * (sHigh + s)
  const square = sHigh * sHigh
  const tHigh = leadingBits(3 + square + r)
  const tLow = r - (tHigh - 3 - square)
  const u = sHigh * tHigh
  const v = sLow * tHigh + tLow * s
  const pHigh = leadingBits(u + v)
  const pLow = v - (pHigh - u)
  const zHigh = 0.9617967009544373 * pHigh
  const zLow = -7.028461650952758e-9 * pHigh + pLow * 0.9617966939259756 + log2Low
  const high = leadingBits(zHigh + zLow + log2High + n)
  return twoTo(y, high, zLow - (high - n - log2High - zHigh))
}

/** 2 to the power y × (high + low). */
function twoTo(y: f64, high: f64, low: f64): f64 {
  const yHigh = leadingBits(y)
  const lowPart = (y - yHigh) * high + y * low
  let highPart = yHigh * high
  const z = lowPart + highPart
  if (z >= 1024 && (z > 1024 || lowPart + 8.008566259537294e-17 > z - highPart)) return Infinity
  if (z <= -1075 && (z < -1075 || lowPart <= z - highPart)) return 0
  const n = Math.floor(z + 0.5)
  highPart -= n
  const t = leadingBits(lowPart + highPart)
  const u = t * 0.6931471824645996
  const v = (lowPart - (t - highPart)) * LN_2 + t * -1.904654299957768e-9
  const sum = u + v
  const w = v - (sum - u)
  const c = remez(sum)
  const rest = (sum * c) / (c - 2) - (w + sum * w)
  const whole = i32(n)
  const first = whole >> 1
  return (1 - (rest - sum)) * powerOfTwo(first) * powerOfTwo(whole - first)
}

function remez(x: f64): f64 {
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

/** 2^n for n from -1022 to 1023. */
function powerOfTwo(n: i32): f64 {
  return reinterpret<f64>(u64(n + 1023) << 52)
}

/** The upper 26 bits of x (Veltkamp's split). */
function leadingBits(x: f64): f64 {
  const c = 134217729 * x
  return c - (c - x)
}
