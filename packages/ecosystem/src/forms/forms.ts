import { exp, pow, tanh } from '@holdfast/elementary'

/** Saturating answer to a concentration (Monod 1949, Annu Rev Microbiol 3:371; as recalled). */
export function monod(concentration: number, halfSaturation: number): number {
  const sum = concentration + halfSaturation
  return sum > 0 ? concentration / sum : 0
}

// A run asks for the same few powers thousands of times a day: each is worked out once and kept.
const kept = 32
const keptFactors = new Float64Array(kept).fill(Number.NaN)
const keptTemperatures = new Float64Array(kept)
const keptPowers = new Float64Array(kept)

/** Rate relative to 25 °C when `perTenDegrees` is its factor for ten degrees. */
export function q10(perTenDegrees: number, temperature: number): number {
  const slot = Math.imul(perTenDegrees * 65536, 0x9e3779b1) >>> 27
  if (keptFactors[slot] === perTenDegrees && keptTemperatures[slot] === temperature) return keptPowers[slot]
  const power = pow(perTenDegrees, (temperature - 25) / 10)
  keptFactors[slot] = perTenDegrees
  keptTemperatures[slot] = temperature
  keptPowers[slot] = power
  return power
}

/** Rate relative to that at the best temperature: it falls below, and stays level above. */
export function warmth(perTenDegrees: number, temperature: number, best: number): number {
  return temperature < best ? q10(perTenDegrees, 25 + temperature - best) : 1
}

/**
 * Growth by the store of a nutrient in the tissue (Droop 1968, J Mar Biol Assoc UK 48:689; as
 * recalled), scaled to 1 at the fed end, since tabled maximum rates are growth in plenty.
 */
export function droop(quota: number, least: number, fed: number): number {
  if (quota <= least) return 0
  if (quota >= fed) return 1
  return (1 - least / quota) / (1 - least / fed)
}

/** Below this the Freundlich isotherm is a line to zero: its slope at zero would be infinite. µmol/L. */
const LINEAR_BELOW = 0.05

/**
 * Load in equilibrium, relative to the load at the reference concentration (Freundlich 1906; form as
 * recalled); a line to zero with matched value under 0.05 µmol/L.
 */
export function freundlich(concentration: number, reference: number, exponent: number): number {
  if (concentration <= 0) return 0
  if (concentration >= LINEAR_BELOW) return pow(concentration / reference, exponent)
  return (pow(LINEAR_BELOW / reference, exponent) * concentration) / LINEAR_BELOW
}

/** Photosynthesis of a thin layer against light (Jassby & Platt 1976, Limnol Oceanogr 21:540; as recalled). */
export function lightSaturation(light: number, saturation: number): number {
  return tanh(light / saturation)
}

/** Mean light in a stand of optical depth `depth`: the integral of exponential shade through it. */
export function selfShaded(light: number, depth: number): number {
  return depth < 1e-6 ? light : (light * (1 - exp(-depth))) / depth
}

/** Share of the light that comes through a canopy of optical depth `depth`. */
export function throughCanopy(depth: number): number {
  return depth > 0 ? exp(-depth) : 1
}

/** Cover of a film whose patches lie at random, relative to the mass that hides the ground (95 % there). */
export function filmCover(mass: number, hiding: number): number {
  return 1 - exp((-3 * mass) / hiding)
}

/** What is left of a rate when another substance at its half-effect concentration halves it. */
export function inhibited(concentration: number, halfEffect: number): number {
  return halfEffect / (halfEffect + concentration)
}

/** 1 up to `full`, then in a line down to `least` at `limit`, and `least` above. */
export function fallingLine(height: number, full: number, limit: number, least: number): number {
  if (height <= full) return 1
  if (height >= limit) return least
  return 1 - ((1 - least) * (height - full)) / (limit - full)
}

/** The value, and zero below zero. */
export function positive(value: number): number {
  return value > 0 ? value : 0
}

/** A part of a whole; nothing of nothing is zero. */
export function part(value: number, whole: number): number {
  return whole > 0 ? value / whole : 0
}

export function least(a: number, b: number): number {
  return a < b ? a : b
}

export function most(a: number, b: number): number {
  return a > b ? a : b
}
