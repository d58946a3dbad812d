import { expect, test } from 'vitest'
import { compoundNamed, doseMass, massFraction } from './dose-mass.ts'

// Arithmetic from the formulas: NH4Cl 53.49 g/mol, N 14.007; KNO3 101.10; KH2PO4 136.08, P 30.974.
test('2 mg/L of ammonium nitrogen in 200 L take 1.53 g of ammonium chloride', () => {
  expect(doseMass('ammonium chloride', 'N', 2, 200)).toBeCloseTo(1.5276, 3)
})

test('potassium nitrate is 13.85 % N, monopotassium phosphate 22.76 % P', () => {
  expect(massFraction('potassium nitrate', 'N')).toBeCloseTo(0.13854, 4)
  expect(massFraction('monopotassium phosphate', 'P')).toBeCloseTo(0.22761, 4)
})

test('a salt without phosphorus cannot raise phosphate', () => {
  expect(() => doseMass('sodium nitrate', 'P', 1, 100)).toThrow('Choose a compound that holds P.')
})

test('a compound is found whatever its spelling, and an unknown one is not guessed', () => {
  expect(compoundNamed(' Ammonium chloride')).toBe('ammonium chloride')
  expect(compoundNamed('pond salt')).toBeUndefined()
})
