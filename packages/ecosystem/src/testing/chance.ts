/** Numbers that look drawn and are the same every time: a counter through a mixer of bits (0 up to 1). */
export function chance(seed: number): () => number {
  let counter = seed >>> 0
  return () => {
    counter = (counter + 0x9e3779b9) >>> 0
    let bits = counter
    bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b)
    bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35)
    return ((bits ^ (bits >>> 16)) >>> 0) / 4294967296
  }
}
