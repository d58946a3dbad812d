import { expect, test } from 'vitest'
import { pH } from '../ph/ph.ts'
import { carbonateSystem } from './carbonate-system.ts'
import { aragoniteSaturation } from './saturation.ts'

const reef = { salinity: 35, temperature: 25 }

// PyCO2SYS 1.8.3.4 with the constants named in the files beside this one.
test('2300 µmol/kg of alkalinity and 2000 of carbon stand at pH 8.046 and 397 µatm', () => {
  const system = carbonateSystem({ totalAlkalinity: 2300, dissolvedInorganicCarbon: 2000 }, reef)
  expect(Math.abs(system.pH.value - 8.0459)).toBeLessThan(0.002)
  expect(Math.abs(system.pCO2 - 396.9)).toBeLessThan(0.6)
  expect(Math.abs(system.carbonate - 213.42)).toBeLessThan(0.5)
  expect(Math.abs(aragoniteSaturation(system.carbonate, 35, 25) - 3.386)).toBeLessThan(0.01)
})

test('any two of the four give the same other two', () => {
  for (const water of [reef, { salinity: 30, temperature: 12 }, { salinity: 41, temperature: 31 }]) {
    for (const value of [7.4, 8.05, 8.6]) {
      const first = carbonateSystem({ totalAlkalinity: 2500, pH: pH('total', value) }, water)
      const { totalAlkalinity, dissolvedInorganicCarbon, pCO2 } = first
      const same = [
        { totalAlkalinity, dissolvedInorganicCarbon },
        { totalAlkalinity, pCO2 },
        { dissolvedInorganicCarbon, pH: first.pH },
        { dissolvedInorganicCarbon, pCO2 },
        { pH: first.pH, pCO2 },
      ].map((pair) => carbonateSystem(pair, water))
      for (const other of same) {
        expect(other.totalAlkalinity).toBeCloseTo(2500, 6)
        expect(other.dissolvedInorganicCarbon).toBeCloseTo(dissolvedInorganicCarbon, 6)
        expect(other.pH.value).toBeCloseTo(value, 9)
        expect(other.pCO2).toBeCloseTo(pCO2, 6)
      }
    }
  }
})

test('carbon is the sum of its three forms', () => {
  const system = carbonateSystem({ totalAlkalinity: 2300, pCO2: 420 }, reef)
  const sum = system.carbonDioxide + system.bicarbonate + system.carbonate
  expect(sum).toBeCloseTo(system.dissolvedInorganicCarbon, 9)
})

test('the boron of Lee et al. 2010 in place of Uppström shifts pH from alkalinity and carbon by -0.0055', () => {
  const pair = { totalAlkalinity: 2300, dissolvedInorganicCarbon: 2000 }
  const shift =
    carbonateSystem(pair, { ...reef, boron: 432.6 }).pH.value - carbonateSystem(pair, reef).pH.value
  expect(shift).toBeCloseTo(-0.0055, 3)
})

test('saturation goes with calcium, so measured calcium counts', () => {
  const bySalinity = aragoniteSaturation(200, 35, 25)
  expect(aragoniteSaturation(200, 35, 25, 10280 * 1.1) / bySalinity).toBeCloseTo(1.1, 3)
})

test('what no sea water can have is an error that names it', () => {
  expect(() => carbonateSystem({ totalAlkalinity: 50, pH: pH('total', 9) }, reef)).toThrow(
    'borate and hydroxide',
  )
  expect(() => carbonateSystem({ totalAlkalinity: 0, pH: pH('total', 8) }, reef)).toThrow(
    'total alkalinity: 0',
  )
  expect(() => carbonateSystem({ totalAlkalinity: 1e5, dissolvedInorganicCarbon: 10 }, reef)).toThrow(
    'No sea water has both',
  )
  expect(() =>
    carbonateSystem({ totalAlkalinity: 2300, pCO2: 400 }, { salinity: 10, temperature: 25 }),
  ).toThrow('salinity: 10 is outside 19 to 43.')
})
