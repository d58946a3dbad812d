import { normalQuantile } from './normal-quantile.ts'

/**
 * Random numbers by counter: a draw depends on seed, member and name alone, never on what was drawn
 * before, so that a member is the same in any batch, on any number of workers.
 */
export function uniform(seed: number, member: number, name: string): number {
  let a = mix(seed ^ 0x9e3779b9)
  a = mix(a ^ mix(member + 0x7f4a7c15))
  for (let i = 0; i < name.length; i++) a = mix(a ^ name.charCodeAt(i) ^ Math.imul(i + 1, 0x85ebca6b))
  const b = mix(a ^ 0xc2b2ae35)
  // 53 bits out of two words, in the open interval.
  return ((a >>> 5) * 67108864 + (b >>> 6) + 0.5) / 9007199254740992
}

/** A draw of the normal distribution of mean 0 and spread 1. */
export const normal = (seed: number, member: number, name: string): number =>
  normalQuantile(uniform(seed, member, name))

/** Finaliser of MurmurHash3 (Appleby, public domain; constants as recalled, spread tested). */
function mix(word: number): number {
  let h = word | 0
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b)
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35)
  return (h ^ (h >>> 16)) >>> 0
}
