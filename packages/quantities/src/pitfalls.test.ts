import { expect, test } from 'vitest'
import {
  alkalinityIn,
  parseAlkalinity,
  parseConcentration,
  parseSalinity,
  parseVolume,
  quantityNames,
  readingIn,
  readingInCommonUnits,
  readQuantity,
  statedInWords,
} from './index.ts'

/** Slips that builders of such a tool make, each named. */

test('nitrate as N taken for nitrate as NO3, and phosphate as P for PO4', () => {
  expect(parseConcentration('nitrate', '5 mg/L').ask?.options.map(({ answer }) => answer)).toEqual([
    '5 mg/L NO3',
    '5 mg/L NO3-N',
  ])
  for (const bare of ['5 mg/L', '5 ppm', '5 ppb', '5 µg/L', '5 mg/L nitrate', '<5 mg/L', '5-10 ppm'])
    expect(readQuantity('nitrate', bare).ask?.code, bare).toBe('which-form')
  expect(readQuantity('nitrate', '5', { unit: 'mg/L' }).ask?.code).toBe('which-form')
  for (const name of ['nitrite', 'ammonia', 'phosphate'] as const)
    expect(readQuantity(name, '0.1 ppm').ask?.code, name).toBe('which-form')
  expect(readQuantity('silicate', '0.1 ppm').ask?.code).toBe('which-silicate')
  const asNitrogen = readQuantity('nitrate', '1 mg/L NO3-N')
  if (!asNitrogen.ok) throw new Error('not read')
  // 62.004/14.007, IUPAC masses from memory
  const shown = readingInCommonUnits('nitrate', asNitrogen.value)
  expect(shown.map(({ unit, stated }) => `${statedInWords(stated)} ${unit}`)).toContain('4.427 mg/L NO3')
})

test('ppb taken for ppm', () => {
  const read = (text: string) => readQuantity('phosphate', text)
  expect(read('22 ppb P')).toMatchObject({ value: { stated: { value: expect.closeTo(0.067455, 6) } } })
  expect(read('22 ppm P')).toMatchObject({ value: { stated: { value: expect.closeTo(67.455, 3) } } })
  expect(read('22 P').issues).toMatchObject([{ code: 'no-unit' }])
})

test('value and form lost on the way through text', () => {
  const first = readQuantity('nitrate', '1 mg/L NO3-N')
  if (!first.ok) throw new Error('not read')
  const { unit, form, stated } = first.value
  const again = readQuantity('nitrate', `1 ${unit} ${form}`)
  expect(again).toMatchObject({ value: { unit, form, stated } })
})

test('ppm of alkalinity, dKH, meq/L and mmol/L mixed', () => {
  // 1 meq/L in each, to the digits in which the trade's tables print them
  expect(alkalinityIn(1, 'dKH')).toBeCloseTo(2.804, 3)
  expect(alkalinityIn(1, 'ppm CaCO3')).toBeCloseTo(50.04, 2)
  expect(readQuantity('alkalinity', '2.804 dKH')).toMatchObject({
    value: { stated: { value: expect.closeTo(1, 3) } },
  })
  expect(readQuantity('alkalinity', '50.04 ppm CaCO3')).toMatchObject({
    value: { stated: { value: expect.closeTo(1, 3) } },
  })
  const options = parseAlkalinity('1.5 mmol/L').ask?.options
  expect(options?.map(({ answer, factor }) => [answer, factor])).toEqual([
    ['1.5 mmol/L CaCO3', 2],
    ['1.5 mmol/L HCO3', 1],
  ])
  for (const bare of ['150 ppm', '150 mg/L']) expect(parseAlkalinity(bare).ask?.code).toBe('which-alkalinity')
})

test('specific gravity without its two temperatures', () => {
  const { ask } = parseSalinity('1.026 SG')
  expect(ask?.code).toBe('which-reference-temperatures')
  expect(ask?.options.map(({ answer }) => answer)).toEqual([
    '1.026 SG 25/25 °C',
    '1.026 SG 20/20 °C',
    '1.026 SG 60/60 °F',
    '1.026 SG 20/4 °C',
    '1.026 SG 25/4 °C',
  ])
  for (const text of ['1.026 SG 15.6/15.6 °C', '1,026 sg (60/60 F)', 'SG'])
    if (text !== 'SG') expect(parseSalinity(text)).toMatchObject({ value: { reference: '60/60 °F' } })
  expect(parseSalinity('1.026 SG 25/25 °F').ok).toBe(false)
  const gravity = readQuantity('salinity', '1.026 SG 20/4')
  if (!gravity.ok) throw new Error('not read')
  expect(readingIn('salinity', gravity.value, 'SG 25/25 °C').issues).toMatchObject([
    { code: 'needs-sea-water' },
  ])
  expect(readingIn('salinity', gravity.value, 'psu').issues).toMatchObject([{ code: 'needs-sea-water' }])
})

test('a conductivity without its temperature', () => {
  expect(readQuantity('salinity', '53 mS/cm').ask?.code).toBe('which-conductivity-temperature')
  expect(readQuantity('salinity', '53000 µS/cm @ 77F')).toMatchObject({
    value: { stated: { value: expect.closeTo(53, 9) }, canonical: 'mS/cm at 25 °C' },
  })
  expect(parseSalinity('53 mS/cm at 25 °C').issues).toMatchObject([{ code: 'needs-sea-water' }])
})

test('"<0.03" stored as 0, as 0.03, or dropped', () => {
  for (const text of ['<0.03 ppm PO4', '< 0,03 ppm PO4', '≤0.03 ppm PO4', '＜0.03 ppm PO4'])
    expect(readQuantity('phosphate', text), text).toMatchObject({
      value: { text, stated: { is: 'below', limit: 0.03 }, unit: 'ppm', form: 'PO4' },
    })
  const limit = readQuantity('phosphate', '<0.03 mg/L PO4')
  if (!limit.ok) throw new Error('not read')
  for (const { stated, unit } of readingInCommonUnits('phosphate', limit.value))
    expect(stated.is, unit).toBe('below')
})

test('"ND" stored as 0 or dropped', () => {
  for (const text of ['ND', 'n.d.', 'n.n.', 'undetectable', 'ND ppm', 'nd mg/L PO4'])
    expect(readQuantity('phosphate', text), text).toMatchObject({
      value: { text, stated: { is: 'not detected' } },
    })
})

test('"0" of a chart taken for a pure 0: its step goes with it', () => {
  expect(readQuantity('phosphate', '0 ppm PO4', { step: 0.03 })).toMatchObject({
    value: { stated: { is: 'exact', value: 0 }, step: 0.03, text: '0 ppm PO4' },
  })
})

test('"trace" taken for a number', () => {
  expect(readQuantity('phosphate', 'trace').ask?.options.map(({ answer }) => answer)).toEqual(['ND'])
  expect(
    readQuantity('phosphate', 'trace ppm PO4', { step: 0.03 }).ask?.options.map(({ answer }) => answer),
  ).toEqual(['<0.03 ppm PO4', 'ND ppm PO4'])
})

test('a range or a "more than" taken for one number', () => {
  expect(readQuantity('nitrate', '5–10 mg/L NO3')).toMatchObject({
    value: { stated: { is: 'between', low: 5, high: 10 } },
  })
  expect(readQuantity('nitrate', '>50 mg/L NO3')).toMatchObject({
    value: { stated: { is: 'above', limit: 50 } },
  })
  expect(readQuantity('nitrate', 'ca. 2 mg/L NO3')).toMatchObject({
    value: { stated: { is: 'about', value: 2 } },
  })
  expect(parseVolume('50-60 L').issues).toMatchObject([{ code: 'not-one-number' }])
  for (const name of quantityNames) {
    const unit = { unit: name === 'alkalinity' ? 'dKH' : name === 'salinity' ? 'psu' : undefined }.unit
    if (unit !== undefined)
      expect(readQuantity(name, `<5 ${unit}`)).toMatchObject({ value: { stated: { is: 'below' } } })
  }
})

test('the resolution of a kit ignored: the step of the chart is kept, in the unit of the value', () => {
  expect(readQuantity('nitrate', '5 mg/L NO3', { step: 5 })).toMatchObject({ value: { step: 5 } })
  expect(parseConcentration('nitrate', '5 mg/L N', { step: 1 })).toMatchObject({
    value: { step: expect.closeTo(4.427, 3) },
  })
  expect(parseAlkalinity('8.4 dKH', { step: 0.3 })).toMatchObject({
    value: { step: expect.closeTo(0.107, 3) },
  })
  expect(readQuantity('temperature', '78 °F', { step: 1 })).toMatchObject({
    value: { step: expect.closeTo(5 / 9, 12) },
  })
  const reading = readQuantity('nitrate', '5 mg/L N', { step: 1 })
  if (!reading.ok) throw new Error('not read')
  expect(readingIn('nitrate', reading.value, 'mg/L NO3-N')).toMatchObject({
    value: { step: expect.closeTo(1, 12) },
  })
})
