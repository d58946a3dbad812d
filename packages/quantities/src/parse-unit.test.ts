import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  convert,
  dimensionless,
  equalUnits,
  multiplyUnits,
  parseUnit,
  powerUnit,
  readUnit,
  sameDimension,
} from './index.ts'

const sameThing: readonly (readonly [string, string])[] = [
  ['d⁻¹', '1/d'],
  ['µmol L⁻¹', 'umol/L'],
  ['μmol L^-1', 'umol L-1'],
  ['µmol d⁻¹', 'umol per day'],
  ['g N m⁻² d⁻¹', 'g N/(m2 d)'],
  ['mg P g⁻¹', 'mg P/g'],
  ['mg P/g dry', 'mg P g⁻¹ dry'],
  ['L m⁻² d⁻¹', 'L/m2/d'],
  ['m d⁻¹', 'm/d'],
  ['L kg⁻¹', 'L/kg'],
  ['% body mass d⁻¹', '0.01 d⁻¹'],
  ['µmol photons m⁻² s⁻¹', 'umol photons/(m2 s)'],
  ['umol N/(g dry h)', 'µmol g⁻¹ dry h⁻¹'],
  ['mol N mol⁻¹ N', '1'],
  ['mol C/mol N', '1'],
  ['fraction', '-'],
  ['% of dry', '0.01'],
  ['g g⁻¹ as fed', '1'],
  ['m² g⁻¹ dry', 'm2/g dry'],
  ['g dry m⁻²', 'g/m2'],
  ['mg N/(L reactor d)', 'mg N L⁻¹ reactor d⁻¹'],
  ['nmol N/(cm2 h)', '10 µmol m⁻² h⁻¹'],
  ['g algae animal⁻¹ d⁻¹', 'g d⁻¹'],
  ['meq/L', 'mol/m3'],
]

test('one unit written in two ways is one unit', () => {
  const apart = sameThing.filter(([a, b]) => a !== 'meq/L' && !equalUnits(parseUnit(a), parseUnit(b)))
  expect(apart).toEqual([])
})

test('a mole of charge is not a mole of substance, and photons are neither', () => {
  expect(sameDimension(parseUnit('meq/L'), parseUnit('mol/m3'))).toBe(false)
  expect(sameDimension(parseUnit('µmol photons m⁻² s⁻¹'), parseUnit('µmol m⁻² s⁻¹'))).toBe(false)
  expect(sameDimension(parseUnit('psu'), parseUnit('1'))).toBe(false)
})

test('a mass of an atom or ion is an amount', () => {
  // arithmetic on the molar masses of IUPAC
  expect(convert(1, 'g N m⁻² d⁻¹', 'µmol m⁻² d⁻¹')).toBeCloseTo(1e6 / 14.007, 6)
  expect(convert(1, 'mg NO3/L', 'µmol/L')).toBeCloseTo(1000 / 62.004, 9)
  expect(convert(1, 'g C/g N', 'mol C/mol N')).toBeCloseTo(14.007 / 12.011, 12)
  expect(sameDimension(parseUnit('g dry'), parseUnit('g N'))).toBe(false)
})

test('the conversions of every day come out', () => {
  expect(convert(1, 'US gal', 'L')).toBeCloseTo(3.785411784, 12)
  expect(convert(1, 'imp gal', 'L')).toBeCloseTo(4.54609, 12)
  expect(convert(25, '°C', '°F')).toBeCloseTo(77, 9)
  expect(convert(1, '°C', '°F')).toBeCloseTo(33.8, 9)
  expect(convert(1, 'd⁻¹ °C⁻¹', 'd⁻¹ °F⁻¹')).toBeCloseTo(5 / 9, 12)
  expect(convert(1, 'm³', 'L')).toBe(1000)
  expect(convert(24, 'h', 'd')).toBe(1)
})

test('what is not a unit is refused with the accepted ones', () => {
  for (const text of [
    '',
    'foo',
    'g foo',
    'g nitrogen',
    'mg no3/L',
    'g//d',
    '(g',
    'g)',
    'ppm',
    'C',
    'g/m2 d',
    '0 g',
    '5 €',
    'kg^999',
    'mg^999',
  ]) {
    const answer = readUnit(text)
    expect(answer.ok, text).toBe(false)
    if (!answer.ok) expect(answer.issues[0].accepted).toContain('mol')
  }
  expect(() => convert(1, 'g', 'L')).toThrow('Unit: "g" is in a unit of another kind. Write it with L.')
})

test('random text is read or refused, never a crash', () => {
  const piece = fc.constantFrom(
    'g',
    'N',
    'm',
    '⁻²',
    '/',
    '(',
    ')',
    ' ',
    '-1',
    '^',
    'dry',
    'US',
    'gal',
    '%',
    '3',
    '·',
    'µ',
    'per',
  )
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(piece).map((pieces) => pieces.join('')),
  )
  fc.assert(
    fc.property(text, (typed) => {
      const answer = readUnit(typed)
      return answer.ok
        ? Number.isFinite(answer.value.factor) && answer.value.factor > 0
        : answer.issues.length > 0
    }),
    { numRuns: 3000, seed: 1 },
  )
})

test('a unit times its inverse has no dimension, and a power of a power is their product', () => {
  const unit = fc.constantFrom(...sameThing.flat()).map(parseUnit)
  fc.assert(
    fc.property(unit, fc.constantFrom(-2, -1, 0.5, 0.75, 3), (u, n) => {
      expect(equalUnits(multiplyUnits(u, powerUnit(u, -1)), dimensionless)).toBe(true)
      expect(equalUnits(powerUnit(powerUnit(u, n), 1 / n), u)).toBe(true)
    }),
    { seed: 2 },
  )
})

test('every pair of units of one dimension goes there and back', () => {
  const names = [
    ...sameThing.flat(),
    'L',
    'mL',
    'US gal',
    'imp gal',
    'm3',
    'cm3',
    'g',
    'kg',
    'oz',
    'lb',
    'm',
    'cm',
    'in',
    'ft',
    'mm',
    'm2',
    'cm2',
    'in2',
    'ft2',
    's',
    'min',
    'h',
    'd',
    'week',
    'yr',
    '°C',
    '°F',
    'K',
    'L/h',
    'US gph',
    'imp gph',
    'mg N',
    'µg PO4',
    'mmol',
    'mg NO3/L',
    'mg N/L',
    'µmol/L',
    'meq/L',
    'dKH',
    'psu',
    'pH',
    '%',
  ]
  let pairs = 0
  for (const a of names) {
    for (const b of names) {
      if (!sameDimension(parseUnit(a), parseUnit(b))) continue
      pairs++
      expect(Math.abs(convert(convert(7.25, a, b), b, a) / 7.25 - 1), `${a} to ${b}`).toBeLessThan(1e-12)
    }
  }
  expect(pairs).toBeGreaterThan(names.length * 2)
})
