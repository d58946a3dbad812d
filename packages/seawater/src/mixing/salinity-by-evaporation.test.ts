import { expect, test } from 'vitest'
import {
  afterEvaporation,
  afterTakingOut,
  mixed,
  salinityOf,
  saltyWater,
  topOffVolume,
  volumeOf,
} from './salinity-by-evaporation.ts'

// Mass balance of salt with EOS-80 densities, computed apart.
test('200 L of S 35 that lose 5 L of vapour stand at 35.874', () => {
  const after = afterEvaporation(saltyWater(200, 35, 25), 5, 25)
  expect(Math.abs(salinityOf(after) - 35.8738)).toBeLessThanOrEqual(0.005)
})

test('200 L of S 36 need 5.869 L of pure water to come to 35', () => {
  expect(Math.abs(topOffVolume(saltyWater(200, 36, 25), 35, 25) - 5.869)).toBeLessThanOrEqual(0.01)
})

test('100 L of S 35 and 10 L of fresh water mix to 31.893', () => {
  const both = mixed(saltyWater(100, 35, 25), saltyWater(10, 0, 25))
  expect(Math.abs(salinityOf(both) - 31.8927)).toBeLessThanOrEqual(0.005)
})

test('what evaporated and is poured back as pure water leaves salinity and volume where they were', () => {
  const before = saltyWater(50, 35, 25.5)
  const after = mixed(afterEvaporation(before, 1.5, 25.5), saltyWater(1.5, 0, 25.5))
  expect(salinityOf(after)).toBeCloseTo(35, 12)
  expect(volumeOf(after, 25.5)).toBeCloseTo(50, 12)
})

test('taking water out does not move salinity', () => {
  const after = afterTakingOut(saltyWater(50, 35, 25), 0.2)
  expect(salinityOf(after)).toBeCloseTo(35, 12)
  expect(volumeOf(after, 25)).toBeCloseTo(40, 12)
})

test('more vapour than water, or pure water to raise salinity, is an error', () => {
  expect(() => afterEvaporation(saltyWater(5, 35, 25), 6, 25)).toThrow('evaporated: 6')
  expect(() => topOffVolume(saltyWater(5, 35, 25), 36, 25)).toThrow('Pure water only lowers salinity.')
})
