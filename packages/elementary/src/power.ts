/*
 * After fdlibm 5.3 (e_pow.c).
 * Copyright (C) 1993 (2004 for pow) by Sun Microsystems, Inc. All rights reserved.
 * Developed at SunPro and SunSoft, Sun Microsystems, Inc. businesses.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this
 * notice is preserved.
 */

import { remez } from './exponential.ts'
import { highWord } from './high-word.ts'
import { powerOfTwo, scaled } from './powers-of-two.ts'

const TWO_31 = 2147483648
const TWO_32 = 4294967296
const TWO_53 = 9007199254740992
const TWO_64 = TWO_32 * TWO_32

/**
 * x to the power y, to better than 1 unit in the last place; the special cases are those of ECMA-262
 * (so `pow(1, Infinity)` is NaN).
 */
export function pow(x: number, y: number): number {
  if (y === 0) return 1
  if (Number.isNaN(x) || Number.isNaN(y)) return Number.NaN
  if (y === 1) return x
  if (y === 2) return x * x
  if (y === -1) return 1 / x
  const base = x < 0 ? -x : x
  if (y === Number.POSITIVE_INFINITY) return base === 1 ? Number.NaN : base > 1 ? y : 0
  if (y === Number.NEGATIVE_INFINITY) return base === 1 ? Number.NaN : base > 1 ? 0 : -y
  if (x > 0 && x !== Number.POSITIVE_INFINITY) return y === 0.5 ? Math.sqrt(x) : ofPositive(x, y)
  const negative = x < 0 || (x === 0 && 1 / x < 0)
  const whole = Math.floor(y) === y
  const odd = whole && y < TWO_53 && y > -TWO_53 && Math.floor(y / 2) * 2 !== y
  if (x === 0 || base === Number.POSITIVE_INFINITY) {
    const magnitude = (x === 0) === y > 0 ? 0 : Number.POSITIVE_INFINITY
    return negative && odd ? -magnitude : magnitude
  }
  if (!whole) return Number.NaN
  return odd ? -ofPositive(base, y) : ofPositive(base, y)
}

/** x finite and above 0; y finite. */
function ofPositive(x: number, y: number): number {
  if (x === 1) return 1
  if (y > TWO_31 || y < -TWO_31) {
    const farFromOne = x < 0.9999990463256836 || x > 1.0000009536743164
    if (farFromOne || y > TWO_64 || y < -TWO_64) return x < 1 === y > 0 ? 0 : Number.POSITIVE_INFINITY
    return nearOne(x, y)
  }
  return general(x, y)
}

/** |x - 1| below 2⁻²⁰: log2 x by its series. */
function nearOne(x: number, y: number): number {
  const t = x - 1
  const w = t * t * (0.5 - t * (0.3333333333333333 - t * 0.25))
  const u = 1.4426950216293335 * t
  const v = t * 1.9259629911266175e-8 - w * Math.LOG2E
  const high = leadingBits(u + v)
  return twoTo(y, high, v - (high - u))
}

function general(x: number, y: number): number {
  let n = 0
  let normal = x
  if (x < 2.2250738585072014e-308) {
    n = -53
    normal = x * TWO_53
  }
  const word = highWord(normal)
  const mantissa = word & 0x000fffff
  let shift = (word >> 20) - 1023
  // the fraction is held against 1 or 1.5, whichever is nearer
  let against = 1
  let log2High = 0
  let log2Low = 0
  if (mantissa >= 0xbb67a) shift += 1
  else if (mantissa > 0x3988e) {
    against = 1.5
    log2High = 0.5849624872207642
    log2Low = 1.350039202129749e-8
  }
  n += shift
  const fraction = normal * powerOfTwo(-shift)

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
function twoTo(y: number, high: number, low: number): number {
  const yHigh = leadingBits(y)
  const lowPart = (y - yHigh) * high + y * low
  let highPart = yHigh * high
  const z = lowPart + highPart
  if (z >= 1024 && (z > 1024 || lowPart + 8.008566259537294e-17 > z - highPart)) {
    return Number.POSITIVE_INFINITY
  }
  if (z <= -1075 && (z < -1075 || lowPart <= z - highPart)) return 0
  const n = Math.floor(z + 0.5)
  highPart -= n
  const t = leadingBits(lowPart + highPart)
  const u = t * 0.6931471824645996
  const v = (lowPart - (t - highPart)) * Math.LN2 + t * -1.904654299957768e-9
  const sum = u + v
  const w = v - (sum - u)
  const c = remez(sum)
  const rest = (sum * c) / (c - 2) - (w + sum * w)
  return scaled(1 - (rest - sum), n)
}

/**
 * The upper 26 bits of x (Veltkamp's split). fdlibm cuts the lower word off instead; the split needs no
 * trip through memory, and 26 bits times 26 bits are still exact in 53.
 */
function leadingBits(x: number): number {
  const c = 134217729 * x
  return c - (c - x)
}
