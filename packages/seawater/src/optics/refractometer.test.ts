import { expect, test } from 'vitest'
import { refractiveIndexQuanFry1995, salinityFromRefractometer } from './refractive-index-quan-fry-1995.ts'

test('at 25 °C a scale made for 20 °C reads 3 too low', () => {
  expect(salinityFromRefractometer(35, 25, 20)).toBeCloseTo(38.02, 1)
})

test('at the temperature it was made for the scale is true', () => {
  expect(salinityFromRefractometer(34.2, 20, 20)).toBeCloseTo(34.2, 10)
})

test('the salinity found bends light as the reading says', () => {
  const found = salinityFromRefractometer(33, 27, 20)
  expect(refractiveIndexQuanFry1995(found, 27)).toBeCloseTo(refractiveIndexQuanFry1995(33, 20), 12)
})

test('a reading that ends outside all sea water is an error', () => {
  expect(() => salinityFromRefractometer(0, 10, 30)).toThrow('compensation of its own')
})
