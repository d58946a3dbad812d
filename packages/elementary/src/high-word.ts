const double = new Float64Array(1)
const words = new Int32Array(double.buffer)

double[0] = 1
// the order of bytes is the machine's, the place of the upper half is looked up once
const UPPER = words[1] === 0 ? 0 : 1

/** Sign, exponent and the 20 leading bits of the mantissa, as a signed 32-bit integer. */
export function highWord(x: number): number {
  double[0] = x
  return words[UPPER]
}
