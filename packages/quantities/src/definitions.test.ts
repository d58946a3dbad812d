import { expect, test } from 'vitest'
import { convert, molarMass, type QuantityName, readQuantity } from './index.ts'

function value(name: QuantityName, text: string, told: object = {}): number {
  const answer = readQuantity(name, text, told)
  if (!answer.ok || answer.value.stated.is !== 'exact') throw new Error(`${text}: ${JSON.stringify(answer)}`)
  return answer.value.stated.value
}

test('gallons and fluid ounces are what the law says', () => {
  // 231 cubic inches of 2.54 cm; UK Weights and Measures Act 1985: 4.54609 L. Both exact.
  expect(value('volume', '1 US gal')).toBeCloseTo(231 * 2.54 ** 3 * 1e-3, 12)
  expect(value('volume', '1 imp gal')).toBeCloseTo(4.54609, 12)
  expect(value('volume', '128 US fl oz')).toBeCloseTo(3.785411784, 12)
  expect(value('volume', '160 imp fl oz')).toBeCloseTo(4.54609, 12)
  expect(value('flow', '1 US gal/d')).toBeCloseTo(3.785411784 / 24, 12)
  expect(value('flow', '75 gpd (US)')).toBeCloseTo(11.829, 3)
})

test('fluid ounces of no country are asked about, and weight ounces are no volume', () => {
  expect(readQuantity('volume', '12 fl. oz.').ask).toMatchObject({
    code: 'which-fluid-ounce',
    options: [{ answer: '12 US fl oz' }, { answer: '12 imp fl oz' }],
  })
  expect(readQuantity('volume', '12 oz').issues).toMatchObject([{ code: 'wrong-dimension' }])
  expect(readQuantity('length', '12 gal').issues).toMatchObject([{ code: 'wrong-dimension' }])
})

test('inches, feet, ounces and pounds are those of the agreement of 1959, exact', () => {
  expect(value('length', '1 in')).toBeCloseTo(2.54, 12)
  expect(value('length', '1 ft')).toBeCloseTo(30.48, 12)
  expect(value('area', '1 ft²')).toBeCloseTo(0.09290304, 12)
  expect(value('mass', '1 lb')).toBeCloseTo(453.59237, 10)
  expect(value('mass', '16 oz')).toBeCloseTo(453.59237, 10)
})

test('a degree of carbonate hardness is 10 mg of CaO in a litre', () => {
  // CaO binds two charges; molar mass 56.077 of IUPAC's atomic weights (from memory)
  expect(value('alkalinity', '1 dKH')).toBeCloseTo((2 * 10) / 56.077, 6)
  expect(convert(1, 'dKH', 'meq/L')).toBeCloseTo(0.35665, 5)
  expect(value('alkalinity', '1 meq/kg', { density: 1.0233 })).toBeCloseTo(1.0233, 12)
  expect(value('alkalinity', '2300 µmol/kg HCO3', { density: 1.0233 })).toBeCloseTo(2.35359, 9)
})

test('molar masses are the sums of atomic weights', () => {
  // IUPAC abridged standard atomic weights, from memory
  const sums = {
    NO3: 62.004,
    NO2: 46.005,
    NH4: 18.039,
    NH3: 17.031,
    PO4: 94.97,
    CaCO3: 100.086,
    SiO2: 60.083,
    SiO4: 92.081,
  }
  for (const [name, mass] of Object.entries(sums))
    expect(molarMass(name as keyof typeof sums), name).toBeCloseTo(mass, 3)
})

test('elements are themselves, and as chalk they have its weight', () => {
  expect(value('calcium', '420 ppm')).toBe(420)
  expect(value('calcium', '1048.9 ppm CaCO3')).toBeCloseTo((1048.9 * 40.078) / 100.086, 6)
  expect(value('calcium', '10.5 mmol/L')).toBeCloseTo(420.819, 3)
  expect(value('magnesium', '1310 mg/L')).toBe(1310)
  expect(value('potassium', '10 mmol/L')).toBeCloseTo(390.98, 6)
  expect(value('silicate', '1 mg/L Si')).toBeCloseTo(60.083 / 28.085, 6)
})

test('what counts by the kilogram needs the density of the water', () => {
  expect(readQuantity('nitrate', '80 µmol/kg').issues).toMatchObject([{ code: 'needs-density' }])
  expect(value('nitrate', '80 µmol/kg', { density: 1.0233 })).toBeCloseTo(0.08 * 1.0233 * 62.004, 9)
  expect(value('nitrate', '5 mg/kg NO3', { density: 1.0233 })).toBeCloseTo(5.1165, 9)
  expect(value('density', '1023.3 kg/m3')).toBeCloseTo(1.0233, 12)
})

test('light over a day is light at an instant times the hours of light', () => {
  // 200 µmol m⁻² s⁻¹ for 10 h: 200e-6 × 36,000 s
  expect(value('daily-light', '200 µmol/m²/s', { hoursPerDay: 10 })).toBeCloseTo(7.2, 12)
  expect(value('light', '7.2 mol/m²/d', { hoursPerDay: 10 })).toBeCloseTo(200, 9)
  expect(value('light', '200 µmol photons m⁻² s⁻¹')).toBeCloseTo(200, 9)
  expect(value('light', '200 PAR')).toBe(200)
  expect(readQuantity('light', '10 mol/m2/d').issues).toMatchObject([{ code: 'needs-hours' }])
  expect(readQuantity('light', '15000 lux').issues).toMatchObject([{ code: 'needs-spectrum' }])
  expect(readQuantity('light', '200 µmol N/m²/s').issues).toMatchObject([{ code: 'wrong-dimension' }])
})

test('a milliwatt is no megawatt', () => {
  expect(value('power', '60 W')).toBe(60)
  expect(value('power', '0,06 KW')).toBeCloseTo(60, 12)
  expect(value('power', '60 mW')).toBeCloseTo(0.06, 12)
  expect(readQuantity('power', '60 MW').ok).toBe(false)
  expect(readQuantity('power', '60 mw').ok).toBe(false)
})

test('absolute zero is where both scales put it', () => {
  expect(value('temperature', '-459.67 °F')).toBeCloseTo(-273.15, 9)
  expect(value('temperature', '-40 ℉')).toBeCloseTo(-40, 9)
})
