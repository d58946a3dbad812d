import { expect, test } from 'vitest'
import { oxygenSaturationByVolume, oxygenSaturationGarciaGordon1992 } from './oxygen-garcia-gordon-1992.ts'
import { oxygenSolubilityWeiss1970 } from './oxygen-weiss-1970.ts'

test('S 35 at 10 °C holds 274.61 µmol/kg of oxygen', () => {
  // Check value of Garcia & Gordon 1992, from memory; the equation gives it.
  expect(oxygenSaturationGarciaGordon1992(35, 10)).toBeCloseTo(274.61, 1)
})

test('two papers agree within 0.3 % over all tanks', () => {
  for (let s = 0; s <= 40; s += 10) {
    for (let t = 10; t <= 32; t += 2) {
      const older = (oxygenSolubilityWeiss1970(s, t) * 44.66 * 31.998) / 1000
      expect(Math.abs(older / oxygenSaturationByVolume(s, t) - 1)).toBeLessThan(0.0035)
    }
  }
})

test('thinner air leaves less oxygen than in proportion, for vapour keeps its share', () => {
  const high = oxygenSaturationGarciaGordon1992(35, 25, 0.9)
  expect(high / oxygenSaturationGarciaGordon1992(35, 25)).toBeCloseTo(0.8968, 4)
})

test('ice and water hotter than the fit are errors', () => {
  expect(() => oxygenSaturationGarciaGordon1992(35, -2)).toThrow('temperature: -2')
  expect(() => oxygenSaturationGarciaGordon1992(35, 41)).toThrow('to 40.')
  expect(() => oxygenSaturationGarciaGordon1992(35, 25, 101.3)).toThrow('Give atm')
})
