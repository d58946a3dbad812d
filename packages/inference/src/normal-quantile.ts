import { exp, ln } from '@holdfast/elementary'

/**
 * The value below which a normal variable lies with probability p.
 *
 * @param p between 0 and 1, ends left out
 * @source Wichura 1988, Algorithm AS 241, Applied Statistics 37:477, doi:10.2307/2347330 (PPND16;
 *   coefficients from memory, checked against printed quantiles)
 */
export function normalQuantile(p: number): number {
  const q = p - 0.5
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q
    return (q * polynomial(centreTop, r)) / polynomial(centreBottom, r)
  }
  const tail = q < 0 ? p : 1 - p
  const r = Math.sqrt(-ln(tail))
  const value =
    r <= 5
      ? polynomial(middleTop, r - 1.6) / polynomial(middleBottom, r - 1.6)
      : polynomial(farTop, r - 5) / polynomial(farBottom, r - 5)
  return q < 0 ? -value : value
}

/**
 * Probability that a normal variable lies below z.
 *
 * @source Abramowitz & Stegun 1964, 26.2.17 (from memory; error under 7.5e-8)
 */
export function normalProbability(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z))
  const density = 0.3989422804014327 * exp((-z * z) / 2)
  const upper =
    density * t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  return z >= 0 ? 1 - upper : upper
}

/** Coefficients from the constant term on. */
const polynomial = (coefficients: readonly number[], x: number): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0)

const centreTop = [
  3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
  67265.7709270087, 33430.57558358813, 2509.0809287301227,
]
const centreBottom = [
  1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
  28729.085735721943, 5226.495278852854,
]
const middleTop = [
  1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
  0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
]
const middleBottom = [
  1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
  0.0005475938084995345, 1.0507500716444169e-9,
]
const farTop = [
  6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
  0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
]
const farBottom = [
  1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
  1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
]
