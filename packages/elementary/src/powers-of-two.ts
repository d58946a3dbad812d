const LEAST = -1074
const GREATEST = 1023

/** 2^-1074 to 2^1023. A table, since building the bits of a double stalls the processor on the way back. */
const powers = new Float64Array(GREATEST - LEAST + 1)
for (let power = 1, n = 0; n <= GREATEST; n++, power *= 2) powers[n - LEAST] = power
for (let power = 0.5, n = -1; n >= LEAST; n--, power /= 2) powers[n - LEAST] = power

/** 2^n, exact, for whole n from -1074 to 1023. */
export function powerOfTwo(n: number): number {
  return powers[n - LEAST]
}

/** y × 2^n, rounded once; y within [0.25, 4], n whole and within ±1100. */
export function scaled(y: number, n: number): number {
  if (n > 1000) return y * powerOfTwo(n - 100) * powerOfTwo(100)
  // the first factor keeps the product normal, so that only the second rounds
  if (n < -1000) return y * powerOfTwo(n + 100) * powerOfTwo(-100)
  return y * powerOfTwo(n)
}
