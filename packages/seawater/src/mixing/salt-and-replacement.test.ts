import { expect, test } from 'vitest'
import { replacementVolume } from './replacement.ts'
import { mixed, salinityOf, saltyWater } from './salinity-by-evaporation.ts'
import { freshWaterForVolume, saltMassForVolume, saltToRaise } from './salt-mass.ts'

// Mass balance worked out apart, EOS-80 densities.
test('100 L of S 35 take 3.6 kg of dry salt and 99 L of fresh water', () => {
  expect(Math.abs(saltMassForVolume(100, 35, 25, 1) - 3598.6)).toBeLessThan(1.8)
  expect(Math.abs(freshWaterForVolume(100, 35, 25) - 99.028)).toBeLessThan(0.02)
})

test('a mix that is a tenth water weighs a ninth more', () => {
  expect(saltMassForVolume(100, 35, 25, 0.9) / saltMassForVolume(100, 35, 25, 1)).toBeCloseTo(1 / 0.9, 12)
})

test('salt for a whole tank is what raises fresh water to the target', () => {
  const fresh_L = freshWaterForVolume(100, 35, 25)
  expect(saltToRaise(fresh_L, 0, 35, 25, 1)).toBeCloseTo(saltMassForVolume(100, 35, 25, 1), 6)
})

test.each([
  [{ volume_L: 200, salinity: 37, newWater: 0, target: 35, temperature: 25 }],
  [{ volume_L: 100, salinity: 33, newWater: 40, target: 35, temperature: 25 }],
])('the water replaced mixes to the salinity wanted', (replacement) => {
  const { volume_L, salinity, newWater, target, temperature } = replacement
  const litres = replacementVolume(replacement)
  const left = saltyWater(volume_L - litres, salinity, temperature)
  expect(salinityOf(mixed(left, saltyWater(litres, newWater, temperature)))).toBeCloseTo(target, 10)
})

test('nothing is replaced where the tank is right already', () => {
  const right = { volume_L: 200, salinity: 35, newWater: 0, target: 35, temperature: 25 }
  expect(replacementVolume(right)).toBe(0)
})

test('new water cannot take a tank past itself or the other way, and the error says so', () => {
  const tank = { volume_L: 200, salinity: 33, target: 35, temperature: 25 }
  expect(() => replacementVolume({ ...tank, newWater: 34 })).toThrow('between 34, which the new water has')
  expect(() => replacementVolume({ ...tank, newWater: 0 })).toThrow('target salinity: 35')
  expect(() => saltToRaise(200, 36, 35, 25, 1)).toThrow('Salt only raises salinity.')
  expect(() => saltMassForVolume(200, 35, 25, 0)).toThrow('salt fraction: 0')
})
