import { expect, test } from 'vitest'
import {
  isQuantityName,
  quantities,
  quantityNames,
  readingIn,
  readingInCommonUnits,
  readQuantity,
} from './index.ts'

const setting = { density: 1.0233, hoursPerDay: 10 }

test('every unit and form on the list is read by its own quantity', () => {
  for (const name of quantityNames) {
    const { units, common, canonical, forms } = quantities[name]
    const first = forms[0] ?? ''
    for (const unit of [...common, canonical, ...units.map((one) => `${one} ${first}`.trim())]) {
      // the alkalinity's units name their form already
      const written =
        name === 'alkalinity'
          ? unit.replace(/ CaCO3( CaCO3)$|(?<=dKH|meq\/L|meq\/kg|HCO3) CaCO3$/, '$1')
          : unit
      const answer = readQuantity(name, `2 ${written}`, setting)
      expect(answer.ok, `${name}: ${written}`).toBe(true)
    }
  }
})

test('what is canonical is its own value', () => {
  for (const name of quantityNames) {
    const { canonical } = quantities[name]
    const answer = readQuantity(name, `2 ${canonical}`)
    if (!answer.ok) throw new Error(name)
    expect(answer.value.canonical, name).toBe(canonical)
    expect(answer.value.stated.is === 'exact' && answer.value.stated.value, name).toBeCloseTo(2, 12)
  }
})

test('a figure of one quantity is not taken for another', () => {
  const typed = {
    volume: '5 L',
    mass: '5 g',
    light: '5 PAR',
    alkalinity: '8 dKH',
    salinity: '35 psu',
    power: '5 W',
  }
  for (const [own, text] of Object.entries(typed))
    for (const name of quantityNames)
      expect(readQuantity(name, text).ok, `${text} as ${name}`).toBe(name === own)
})

test('a unit that is asked for keeps the form of the reading, and is asked about as what is typed is', () => {
  const nitrate = readQuantity('nitrate', '1 mg/L NO3-N')
  const volume = readQuantity('volume', '5 L')
  if (!nitrate.ok || !volume.ok) throw new Error('not read')
  expect(readingIn('nitrate', nitrate.value, 'µg/L')).toMatchObject({
    value: { stated: { is: 'exact', value: expect.closeTo(1000, 9) } },
  })
  expect(readingIn('volume', volume.value, 'gal').ask).toMatchObject({
    code: 'which-gallon',
    got: 'gal',
    question: 'Volume, unit asked for: is "gal" in US or in imperial gallons?',
    options: [{ answer: 'US gal' }, { answer: 'imp gal' }],
  })
  expect(readingIn('nitrate', nitrate.value, 'µmol/kg').issues).toMatchObject([
    { code: 'needs-density', got: 'µmol/kg' },
  ])
  expect(readingIn('volume', volume.value, 'kg').issues).toMatchObject([
    { code: 'wrong-dimension', got: 'kg' },
  ])
})

test('units that need to know more are left out of the usual ones', () => {
  const nitrate = readQuantity('nitrate', '5 mg/L NO3')
  if (!nitrate.ok) throw new Error('not read')
  const shown = (told: object) => readingInCommonUnits('nitrate', nitrate.value, told).map(({ unit }) => unit)
  expect(shown({})).not.toContain('µmol/kg')
  expect(shown({ density: 1.0233 })).toContain('µmol/kg')
})

test('the place tells unit and form where the text has none, and the text comes first', () => {
  const read = (text: string, unit?: string, form?: string) =>
    readQuantity('nitrate', text, { ...(unit && { unit }), ...(form && { form }) })
  expect(read('5', 'ppm', 'NO3-N')).toMatchObject({ value: { text: '5', unit: 'ppm', form: 'NO3-N' } })
  expect(read('5 mg/L NO3', 'ppm', 'NO3-N')).toMatchObject({ value: { stated: { value: 5 }, form: 'NO3' } })
  for (const form of ['as N', 'nitrogen', 'N', 'NO₃-N'])
    expect(read('trace ppm', 'ppm', form).ask?.code, form).toBe('what-trace')
  expect(read('ND µmol/L as N', undefined, 'as N').ok).toBe(true)
  expect(read('5 mg/L', undefined, 'PO4').issues).toMatchObject([{ code: 'unknown-unit' }])
  expect(readQuantity('alkalinity', '150 ppm', { form: 'CaCO3' })).toMatchObject({
    value: { unit: 'ppm CaCO3' },
  })
  expect(isQuantityName('constructor')).toBe(false)
})
