import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type AlkalinityUnit,
  type Answer,
  alkalinityIn,
  ammoniaFromMicromolar,
  type ConcentrationUnit,
  concentrationIn,
  convert,
  type Form,
  micromolarFromAmmonia,
  micromolarFromNitrate,
  micromolarFromNitrite,
  micromolarFromPhosphate,
  molarMass,
  type Nutrient,
  nitrateFromMicromolar,
  nitriteFromMicromolar,
  parseAlkalinity,
  parseConcentration,
  parseSalinity,
  phosphateFromMicromolar,
} from './index.ts'

function stated(answer: Answer<{ readonly stated: unknown }>): unknown {
  if (!answer.ok) throw new Error(JSON.stringify(answer))
  return answer.value.stated
}

/** The one number of a reading. */
function exact(answer: Answer<{ readonly stated: unknown }>): number {
  const found = stated(answer)
  if (typeof found !== 'object' || found === null || !('value' in found)) throw new Error('not one number')
  return Number(found.value)
}

test('an ion weighs its known multiple of the atom in it', () => {
  // Factors from the project's arithmetic on IUPAC masses, to their printed digits
  expect(exact(parseConcentration('nitrate', '1 mg/L NO3-N'))).toBeCloseTo(4.427, 3)
  expect(exact(parseConcentration('phosphate', '1 mg/L P'))).toBeCloseTo(3.066, 3)
  expect(exact(parseConcentration('nitrite', '1 mg/L NO2-N'))).toBeCloseTo(3.284, 3)
  expect(molarMass('NH4Cl') / molarMass('N')).toBeCloseTo(3.819, 3)
})

test('one nitrate is one nitrate in whatever unit and form', () => {
  for (const text of [
    '5 mg/L NO3',
    '5 ppm (NO3)',
    '5 mg NO3/L',
    '5000 ug/l as NO3',
    '5000 ppb no3',
    '5 mg/L NO3-',
  ])
    expect(exact(parseConcentration('nitrate', text)), text).toBeCloseTo(5, 9)
  expect(exact(parseConcentration('nitrate', '80.64 µmol/L'))).toBeCloseTo(5, 3)
  expect(exact(parseConcentration('nitrate', '80.64 uM'))).toBeCloseTo(5, 3)
  expect(exact(parseConcentration('phosphate', '22 ppb P'))).toBeCloseTo(0.067455, 5)
  expect(exact(parseConcentration('ammonia', '1 mg/L NH4'))).toBeCloseTo(14.007 / 18.039, 9)
  expect(exact(parseConcentration('nitrate', '1,6', { unit: 'ppm', form: 'N' }))).toBeCloseTo(7.08263, 4)
})

test('limits, spans and nothing found stay what they are', () => {
  expect(stated(parseConcentration('phosphate', '<0.03 mg/L PO4'))).toEqual({ is: 'below', limit: 0.03 })
  expect(stated(parseConcentration('nitrate', '10-20 ppm NO3'))).toEqual({ is: 'between', low: 10, high: 20 })
  expect(stated(parseConcentration('nitrate', '>50', { unit: 'mg/L', form: 'NO3' }))).toEqual({
    is: 'above',
    limit: 50,
  })
  expect(stated(parseConcentration('phosphate', 'n.n.', { unit: 'mg/L', form: 'PO4' }))).toEqual({
    is: 'not detected',
  })
})

test('a mass without its form is a question, and each answer reads with its factor', () => {
  const answer = parseConcentration('nitrate', '5 mg/L')
  expect(answer.ask?.code).toBe('which-form')
  expect(answer.ask?.options.map((option) => option.answer)).toEqual(['5 mg/L NO3', '5 mg/L NO3-N'])
  expect(answer.ask?.options[1]?.factor).toBeCloseTo(4.42664, 4)
  expect(parseConcentration('phosphate', '0.05 ppm').ask?.options[1]?.factor).toBeCloseTo(3.066, 3)
  expect(parseConcentration('ammonia', '1 ppm').ask?.options).toHaveLength(3)
  for (const nutrient of ['nitrate', 'nitrite', 'ammonia', 'phosphate'] as const) {
    for (const typed of ['5 mg/L', '5 ppb']) {
      const { ask } = parseConcentration(nutrient, typed)
      const scale = typed.endsWith('ppb') ? 1e-3 : 1
      for (const option of ask?.options ?? [])
        expect(exact(parseConcentration(nutrient, option.answer))).toBeCloseTo(
          5 * scale * (option.factor ?? 0),
          9,
        )
    }
  }
})

test('a form of another nutrient, no unit or a negative reading is refused', () => {
  expect(parseConcentration('nitrate', '5 mg/L PO4').issues?.[0]?.code).toBe('unknown-unit')
  expect(parseConcentration('nitrate', '5').issues?.[0]?.code).toBe('no-unit')
  expect(parseConcentration('nitrate', '-5 foo').issues?.map(({ code }) => code)).toEqual([
    'unknown-unit',
    'negative',
  ])
})

test('alkalinity: 1 meq/L is 2.804 dKH and 50.04 mg/L CaCO3', () => {
  expect(alkalinityIn(1, 'dKH')).toBeCloseTo(2.804, 3)
  expect(alkalinityIn(1, 'ppm CaCO3')).toBeCloseTo(50.04, 2)
  expect(exact(parseAlkalinity('2.804 dKH'))).toBeCloseTo(1, 3)
  expect(exact(parseAlkalinity('8,4 °dKH'))).toBeCloseTo(2.99586, 4)
  expect(exact(parseAlkalinity('147 mg/L as CaCO3'))).toBeCloseTo(2.93744, 3)
  expect(exact(parseAlkalinity('3 mval/l'))).toBe(3)
  expect(convert(1, 'meq/L', 'dKH')).toBeCloseTo(alkalinityIn(1, 'dKH'), 12)
  const bare = parseAlkalinity('1.5 mmol/L')
  expect(bare.ask?.options.map(({ factor }) => factor)).toEqual([2, 1])
  expect(parseAlkalinity('147 ppm').ask?.code).toBe('which-alkalinity')
  for (const option of bare.ask?.options ?? [])
    expect(exact(parseAlkalinity(option.answer))).toBeCloseTo(1.5 * (option.factor ?? 0), 12)
})

test('a specific gravity is kept with its two temperatures, or asked for them', () => {
  expect(parseSalinity('34,5 ppt')).toEqual({
    ok: true,
    value: { scale: 'practical', psu: 34.5, unit: 'ppt' },
  })
  const answer = parseSalinity('1.026 SG')
  expect(answer.ask?.options).toHaveLength(5)
  for (const option of answer.ask?.options ?? [])
    expect(parseSalinity(option.answer)).toMatchObject({ ok: true, value: { specificGravity: 1.026 } })
  expect(parseSalinity('1.0259', { unit: 'SG', reference: '25/25 °C' })).toEqual({
    ok: true,
    value: { scale: 'specific gravity', specificGravity: 1.0259, reference: '25/25 °C' },
  })
  expect(parseSalinity('1.026 SG 60/60 °F')).toMatchObject({ ok: true, value: { reference: '60/60 °F' } })
  expect(parseSalinity('1.026 SG 19/19 °C').ok).toBe(false)
})

const forms: Readonly<Record<Nutrient, readonly Form[]>> = {
  nitrate: ['NO3', 'N'],
  nitrite: ['NO2', 'N'],
  ammonia: ['N', 'NH3', 'NH4'],
  phosphate: ['PO4', 'P'],
}
const concentrationUnits: readonly ConcentrationUnit[] = ['mg/L', 'ppm', 'µg/L', 'ppb', 'µmol/L', 'mmol/L']
const alkalinityUnits: readonly AlkalinityUnit[] = [
  'meq/L',
  'dKH',
  'ppm CaCO3',
  'ppm HCO3',
  'mmol/L CaCO3',
  'mmol/L HCO3',
]

test('a reading shown in any unit and form and typed again is the same reading', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 500, noNaN: true }), (value) => {
      for (const nutrient of Object.keys(forms) as Nutrient[])
        for (const form of forms[nutrient])
          for (const unit of concentrationUnits) {
            const shown = `${concentrationIn(nutrient, value, unit, form)} ${unit} ${form}`
            expect(exact(parseConcentration(nutrient, shown)) / value).toBeCloseTo(1, 12)
          }
      for (const unit of alkalinityUnits)
        expect(exact(parseAlkalinity(`${alkalinityIn(value, unit)} ${unit}`)) / value).toBeCloseTo(1, 12)
      expect(nitrateFromMicromolar(micromolarFromNitrate(value)) / value).toBeCloseTo(1, 12)
      expect(nitriteFromMicromolar(micromolarFromNitrite(value)) / value).toBeCloseTo(1, 12)
      expect(ammoniaFromMicromolar(micromolarFromAmmonia(value)) / value).toBeCloseTo(1, 12)
      expect(phosphateFromMicromolar(micromolarFromPhosphate(value)) / value).toBeCloseTo(1, 12)
    }),
    { numRuns: 50, seed: 5 },
  )
})

test('the model and the keeper speak of the same nitrate and phosphate', () => {
  // arithmetic on IUPAC masses: 5 mg/L NO3 and 0.05 mg/L PO4
  expect(micromolarFromNitrate(5)).toBeCloseTo(80.64, 2)
  expect(micromolarFromPhosphate(0.05)).toBeCloseTo(0.526482, 4)
  expect(micromolarFromAmmonia(1)).toBeCloseTo(71.3929, 3)
  expect(micromolarFromNitrate(1)).toBeCloseTo(convert(1, 'mg NO3/L', 'µmol/L'), 12)
})

test('random text never brings a reading down', () => {
  const piece = fc.constantFrom(
    '5',
    '0,03',
    '<',
    ' ',
    'mg/L',
    'ppb',
    'NO3',
    '-N',
    'as',
    'P',
    'nd',
    'dKH',
    'SG',
    '25/25 °C',
    'psu',
    '/',
    '(',
  )
  const text = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(piece, { maxLength: 6 }).map((p) => p.join('')),
  )
  fc.assert(
    fc.property(text, (typed) => {
      for (const answer of [
        parseConcentration('nitrate', typed),
        parseConcentration('phosphate', typed),
        parseAlkalinity(typed),
        parseSalinity(typed),
      ])
        if (!answer.ok) expect((answer.ask?.options ?? answer.issues ?? []).length).toBeGreaterThan(0)
    }),
    { numRuns: 2000, seed: 6 },
  )
})
