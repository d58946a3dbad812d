import { expect, test } from 'vitest'
import { normalProbability, normalQuantile } from './normal-quantile.ts'

// Quantiles as printed in tables of the normal distribution (Abramowitz & Stegun 1964, table 26.5; from
// memory), the far tail as given by Wichura 1988 for p = 1e-20.
test.each([
  [0.5, 0],
  [0.75, 0.6744897501960817],
  [0.95, 1.6448536269514722],
  [0.975, 1.959963984540054],
  [0.999, 3.090232306167814],
  [1e-20, -9.26234008979841],
])('the normal quantile at %f is %f', (p, z) => {
  expect(normalQuantile(p)).toBeCloseTo(z, 10)
  if (z !== 0 && p > 1e-10) expect(normalQuantile(1 - p)).toBeCloseTo(-z, 10)
})

test('probability and quantile undo each other', () => {
  for (let p = 0.001; p < 1; p += 0.013) expect(normalProbability(normalQuantile(p))).toBeCloseTo(p, 6)
})
