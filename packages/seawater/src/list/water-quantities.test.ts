import { molarMass } from '@holdfast/quantities'
import { expect, test } from 'vitest'
import * as seawater from '../index.ts'
import { askWater } from './ask-water.ts'
import { citedFor } from './cited-for.ts'
import { codesOfOneKind, convertUnits, needsDensity, unitCodes } from './convert-units.ts'
import { waterInputs } from './water-inputs.ts'
import { waterQuantities } from './water-quantities.ts'

/** Public functions that no quantity of the list rests on, and why. */
const parts = {
  'of a quantity that is listed': [
    'ammoniumPkBell2008',
    'ammoniumPkCleggWhitfield1995',
    'ammoniumPkKhoo1977',
    'freeAboveTotalScale',
    'needsDensity',
    'pH',
    'waterVapourWeissPrice1980',
  ],
  'of a plan of changes or doses, which asks for more than a number': [
    'afterTakingOut',
    'changeFractionNeeded',
    'changesNeeded',
    'changesToShareOfEndValue',
    'compoundNamed',
    'doseMass',
    'exchangedVolumesNeeded',
    'fractionReplacedByChanges',
    'fractionReplacedContinuously',
    'massFraction',
    'volumeOf',
  ],
  'of the list itself': [
    'askWater',
    'canBeLeftOut',
    'citedFor',
    'codesOfOneKind',
    'inputNamed',
    'waterQuantityNamed',
    'OutOfRange',
  ],
} as const

test('every public function is in the list of quantities or named as a part', () => {
  const listed = waterQuantities.flatMap(({ restsOn }) => restsOn)
  const without = Object.entries(seawater)
    .flatMap(([name, value]) => (typeof value === 'function' && !listed.includes(value) ? [name] : []))
    .sort()
  expect(without).toEqual(Object.values(parts).flat().sort())
})

test('no two quantities share an id, and each has a form and a source to read', () => {
  const ids = waterQuantities.map(({ id }) => id)
  expect(new Set(ids).size).toBe(ids.length)
  for (const { forms, restsOn } of waterQuantities) {
    expect(forms.length).toBeGreaterThan(0)
    expect(restsOn.length).toBeGreaterThan(0)
  }
})

test('every input is taken by a quantity', () => {
  const taken = new Set<string>(waterQuantities.flatMap(({ forms }) => forms.flatMap(({ inputs }) => inputs)))
  expect(Object.keys(waterInputs).filter((name) => !taken.has(name))).toEqual([])
})

test('any unit turns into any other of its kind and back', () => {
  for (const from of unitCodes) {
    for (const to of codesOfOneKind(from)) {
      const density = needsDensity(from, to) ? 1.0234 : undefined
      expect(convertUnits(convertUnits(7.3, from, to, density), to, from, density)).toBeCloseTo(7.3, 9)
    }
  }
})

// Closed form from atomic masses.
test('1 meq/L is 2.804 dKH and 50.04 mg/L of CaCO3, in both directions', () => {
  expect(convertUnits(1, 'meq_L', 'dKH')).toBeCloseTo(2.804, 3)
  expect(convertUnits(2.8039, 'dKH', 'meq_L')).toBeCloseTo(1, 4)
  expect(convertUnits(1, 'meq_L', 'CaCO3_mg_L')).toBeCloseTo(50.04, 2)
  expect(convertUnits(molarMass('CaCO3') / 2, 'CaCO3_mg_L', 'meq_L')).toBeCloseTo(1, 12)
})

test('nitrate is not turned into phosphate, nor litres into kilograms without salinity', () => {
  expect(askWater('convert_units', { value: 1, from: 'NO3_mg_L', to: 'PO4_mg_L' })).toMatchObject({
    issues: [{ code: 'no-conversion', accepted: 'NO3_mg_L, NO3-N_mg_L, NO3_umol_L' }],
  })
  expect(askWater('convert_units', { value: 8, from: 'dKH', to: 'alk_umol_kg' })).toMatchObject({
    issues: [
      { code: 'missing-input', where: 'S' },
      { code: 'missing-input', where: 't' },
    ],
  })
})

test('all that is wrong with a question is said at once', () => {
  const answer = askWater('specific_gravity', { S: 'salty', t: 25, wind: 3 })
  expect(answer).toMatchObject({
    issues: [
      { code: 'unknown-input', where: 'wind' },
      { code: 'missing-input', where: 't_ref' },
      { code: 'not-a-number', where: 'S' },
    ],
  })
})

test('specific gravity without the temperature of its reference gets no salinity', () => {
  expect(askWater('salinity_from_specific_gravity', { SG: 1.026, t: 25 })).toMatchObject({
    ok: false,
    issues: [{ code: 'missing-input', where: 't_ref' }],
  })
})

test('a temperature of the scale of 1968 is told from one of 1990, and both at once are refused', () => {
  // UNESCO 1981 check value.
  const answer = askWater('density_eos80', { S: 35, t68: 25 })
  expect(answer.ok && Math.abs(answer.value - 1023.34306) < 2e-5).toBe(true)
  expect(askWater('density_eos80', { S: 35, t: 25, t68: 25 })).toMatchObject({ ok: false })
})

test('pressure, light and glass have usual values, and given ones count', () => {
  const deep = askWater('density_teos10', { S: 35, t: 10, p: 1000 })
  const shallow = askWater('density_teos10', { S: 35, t: 10 })
  expect(deep.ok && shallow.ok && deep.value > shallow.value + 4).toBe(true)
})

test('two volumes of nothing have no salinity', () => {
  const answer = askWater('mix_two_waters', { S1: 35, S2: 0, volume1_L: 0, volume2_L: 0, t: 25 })
  expect(answer).toMatchObject({ ok: false, issues: [{ where: 'mix_two_waters' }] })
})

test('every quantity says who published it, and a year in the name of a function is that of its citation', () => {
  for (const quantity of waterQuantities) {
    for (const one of quantity.restsOn) {
      const cited = citedFor({ ...quantity, restsOn: [one] }).join()
      expect([one.name, cited]).not.toEqual([one.name, ''])
      expect(cited).toContain(/(1|2)\d{3}$/.exec(one.name)?.[0] ?? '')
    }
  }
})
