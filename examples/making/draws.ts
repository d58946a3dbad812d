/** Draws by seed and name, the same on every machine and in any order. */
export function uniform(seed: number, name: string): number {
  let bits = seed | 0
  for (const letter of `${name}!`) {
    bits = Math.imul(bits ^ letter.charCodeAt(0), 0x85ebca6b)
    bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35)
    bits ^= bits >>> 16
  }
  return (bits >>> 0) / 4294967296
}

/** Mean 0, spread 1, near enough to normal: twelve draws added up. */
export function deviate(seed: number, name: string): number {
  let sum = -6
  for (let part = 0; part < 12; part++) sum += uniform(seed, `${name} ${part}`)
  return sum
}
