import { expect, test } from 'vitest'
import {
  changeFractionNeeded,
  changesNeeded,
  changesToShareOfEndValue,
  concentrationAfterChanges,
  concentrationAfterContinuousExchange,
  exchangedVolumesNeeded,
  fractionReplacedByChanges,
  fractionReplacedContinuously,
} from './dilution.ts'

// All figures: closed forms of the mass balance, worked out by hand.
test('five changes of a fifth leave 32.8 % and not nothing', () => {
  expect(1 - fractionReplacedByChanges(0.2, 5)).toBeCloseTo(0.32768, 12)
})

test('20 mg/L after one clean change of a tenth is 18; with 1 mg/L in the new water four fifths end at 8.78', () => {
  expect(concentrationAfterChanges(20, 0, 0.1, 1)).toBeCloseTo(18, 12)
  expect(concentrationAfterChanges(20, 1, 0.2, 4)).toBeCloseTo(8.7824, 10)
})

test('half a volume let run through leaves e^-0.5 of 20 mg/L', () => {
  expect(concentrationAfterContinuousExchange(20, 0, 0.5)).toBeCloseTo(12.13061, 5)
  expect(fractionReplacedContinuously(0.5)).toBeCloseTo(0.39347, 5)
})

test('from 80 to 10 mg/L takes ten changes of a fifth, and exactly two of one half from 40', () => {
  expect(changesNeeded({ from: 80, to: 10, newWater: 0 }, 0.2)).toBe(10)
  expect(changesNeeded({ from: 40, to: 10, newWater: 0 }, 0.5)).toBe(2)
  expect(changesNeeded({ from: 10, to: 10, newWater: 0 }, 0.5)).toBe(0)
})

test('from 40 to 10 mg/L takes three quarters at once, or half twice, or 1.386 volumes let run through', () => {
  const dilution = { from: 40, to: 10, newWater: 0 }
  expect(changeFractionNeeded(dilution, 1)).toBeCloseTo(0.75, 12)
  expect(changeFractionNeeded(dilution, 2)).toBeCloseTo(0.5, 12)
  expect(exchangedVolumesNeeded(dilution)).toBeCloseTo(Math.log(4), 12)
})

test('a steady input is within a tenth of its end value after 22 changes of a tenth', () => {
  expect(changesToShareOfEndValue(0.9, 0.1)).toBe(22)
})

test('water of 5 mg/L never brings a tank below 5, and the error says so', () => {
  expect(() => changesNeeded({ from: 40, to: 4, newWater: 5 }, 0.2)).toThrow(
    'between 5, which the new water has, and 40',
  )
  expect(() => concentrationAfterChanges(-1, 0, 0.2, 1)).toThrow('concentration: -1')
  expect(() => changesNeeded({ from: 40, to: 10, newWater: 0 }, 1)).toThrow('change fraction: 1')
})
