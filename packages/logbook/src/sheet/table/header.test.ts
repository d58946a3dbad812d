import { expect, test } from 'vitest'

import { readHeader } from './header.ts'

test.each([
  ['NO3 (ppm)', { quantity: 'nitrate', unit: 'ppm', form: 'NO3' }],
  ['Nitrat NO3 (mg/l)', { quantity: 'nitrate', unit: 'mg/l', form: 'NO3' }],
  ['Nitrates (mg/L NO3-)', { quantity: 'nitrate', unit: 'mg/L', form: 'NO3' }],
  ['Nitrate-N ppm', { quantity: 'nitrate', unit: 'ppm', form: 'NO3-N' }],
  ['Nitrat-Stickstoff', { quantity: 'nitrate', form: 'NO3-N' }],
  ['PO₄³⁻ [µg/L]', { quantity: 'phosphate', unit: 'µg/L', form: 'PO4' }],
  ['P (low range) ppb P', { quantity: 'phosphate', unit: 'ppb', form: 'PO4-P' }],
  ['KH (°d)', { quantity: 'alkalinity', unit: '°d' }],
  ['KH (dKH)', { quantity: 'alkalinity', unit: 'dKH' }],
  ['TAC (meq/L)', { quantity: 'alkalinity', unit: 'meq/L' }],
  ['Alk (ppm CaCO3)', { quantity: 'alkalinity', unit: 'ppm CaCO3' }],
  ['Dichte 25/25', { quantity: 'salinity', unit: 'SG', reference: '25/25' }],
  ['Leitwert (mS/cm bei 25 °C)', { quantity: 'salinity', unit: 'mS/cm at 25 °C' }],
  ['Temp F', { quantity: 'temperature', unit: 'F' }],
  ['°C', { quantity: 'temperature', unit: '°C' }],
  ['Mg (mg/l)', { quantity: 'magnesium', unit: 'mg/l' }],
  ['Display NO3 ppm', { quantity: 'nitrate', unit: 'ppm', form: 'NO3', others: 'Display' }],
  ['Datum', { role: 'date' }],
  ['Time of day', { role: 'time' }],
  ['What I did', { role: 'note' }],
  ['Volume changed L', { role: 'water change', unit: 'L' }],
  ['Mittelwert', { isSummary: true }],
  ['Iodine (ppm)', { isOther: true }],
])('the heading "%s" says what its column holds', (text, said) => {
  expect(readHeader(text)).toMatchObject(said)
})

test('other words say nothing, and are kept', () => {
  const { role, quantity, others } = readHeader('My reef log')
  expect([role, quantity, others]).toEqual([undefined, undefined, 'My reef log'])
})
