import { expect, test } from 'vitest'

import { salinityOfSpecificGravity } from './specific-gravity.ts'

// EOS-80 by separate arithmetic: specific gravity of water of salinity 35 under each reference.
test.each([
  ['25/25 °C', 1.02637],
  ['20/20 °C', 1.0266],
  ['60/60 °F', 1.02686],
  ['25/4 °C', 1.02337],
] as const)('water of salinity 35 has its known specific gravity at %s', (reference, specificGravity) => {
  expect(salinityOfSpecificGravity(specificGravity, reference)).toBeCloseTo(35, 1)
})

test.each([
  ['25/25 °C', 34.5],
  ['20/20 °C', 34.2],
  ['60/60 °F', 33.9],
  ['20/4 °C', 36.6],
  ['25/4 °C', 38.5],
] as const)('1.026 means another salinity at %s', (reference, salinity) => {
  expect(salinityOfSpecificGravity(1.026, reference)).toBeCloseTo(salinity, 1)
})

test('what no sea water weighs has no salinity', () => {
  expect(salinityOfSpecificGravity(0.98, '25/25 °C')).toBeUndefined()
  expect(salinityOfSpecificGravity(1.2, '25/25 °C')).toBeUndefined()
})
