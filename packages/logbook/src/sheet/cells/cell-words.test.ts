import { expect, test } from 'vitest'

import { Account } from './account.ts'
import { spellFigures } from './figure-text.ts'
import type { Measure } from './measure.ts'
import { readValue } from './read-value.ts'

const nitrate: Measure = { quantity: 'nitrate', unit: 'mg/L', form: 'NO3' }
const said = (text: string, measure: Measure = nitrate, decimal: '.' | ',' = '.'): unknown => {
  const says = readValue({ text }, measure, decimal)
  return says.says === 'value' ? says.value : says
}

test.each([
  ['5', { value: 5, belowDetection: false }],
  ['<0.2', { value: 0.2, belowDetection: true }],
  ['less than 0.2', { value: 0.2, belowDetection: true }],
  ['>50', { value: 50, aboveRange: true }],
  ['mehr als 50', { value: 50, aboveRange: true }],
  ['5-10', { value: 7.5, interval: [5, 10] }],
  ['zwischen 10 und 20', { value: 15, interval: [10, 20] }],
  ['entre 10 y 20', { value: 15, interval: [10, 20] }],
  ['5 ± 1', { value: 5, interval: [4, 6] }],
  ['~20', { value: 20, approximate: true }],
  ['a bit over 10', { value: 10, approximate: true }],
  ['environ 10', { value: 10, approximate: true }],
  ['12?', { value: 12, approximate: true }],
  ['n.n.', { value: null, belowDetection: true, limitless: 'word' }],
  ['indétectable', { value: null, belowDetection: true, limitless: 'word' }],
  ['trace', { value: null, belowDetection: true, limitless: 'word' }],
  ['0', { value: 0, belowDetection: true, limitless: 'zero' }],
  ['3ppm', { value: 3, unit: 'ppm' }],
  ['40 ppb', { value: 0.04, unit: 'ppb' }],
  ['5 tired eyes', { value: 5, remark: 'tired eyes' }],
  ['5 ppm (redone: 4)', { says: 'two numbers', first: '5', second: '4', isRedone: true }],
  ['twelve', { says: 'number in a word', number: 12 }],
  ['kit empty', { says: 'words' }],
  ['2nd kit', { says: 'words' }],
  ['-', { says: 'nothing' }],
  ['n/a', { says: 'nothing' }],
  ['8.2 dKH', { says: 'not read' }],
  ['-3', { says: 'not read' }],
])('the cell "%s" is read as a keeper means it', (text, means) => {
  expect(said(text)).toMatchObject(means)
})

test('a unit in the cell goes before that of its column', () => {
  expect(said('25.5 C', { quantity: 'temperature', unit: '°F' })).toMatchObject({ value: 25.5, unit: 'C' })
  const gravity = said('1.026 SG', { quantity: 'salinity', unit: 'ppt' })
  expect(gravity).toMatchObject({ says: 'missing', missing: [{ topic: 'sg-reference' }] })
})

test('g/kg is asked about, and absolute salinity is turned into practical', () => {
  const salinity: Measure = { quantity: 'salinity', unit: 'g/kg' }
  expect(said('35', salinity)).toMatchObject({ says: 'missing', missing: [{ topic: 'salinity-scale' }] })
  const absolute = said('35.16504', { ...salinity, salinityScale: 'absolute (g/kg)' })
  expect(absolute).toMatchObject({ value: expect.closeTo(35, 6) })
})

test('a mark in a figure is a thousands mark only where the quantity can be so much', () => {
  const fits = (value: number): boolean => value > 100
  expect(spellFigures('1.310', ',', fits)).toMatchObject({
    text: '1310',
    odd: expect.stringContaining('thousands'),
  })
  expect(spellFigures('1,310', '.', fits)).toMatchObject({ text: '1310' })
  expect(spellFigures('0,09', '.', () => true)).toMatchObject({
    text: '0.09',
    odd: expect.stringContaining('decimal'),
  })
  expect(spellFigures('1.310,5 - 1.400', ',', fits)).toMatchObject({ text: '1310.5 - 1400' })
  expect(spellFigures('1 310', '.', fits)).toMatchObject({ text: '1310' })
  expect(spellFigures('1,310', '.', () => true).twoWays).toEqual(['1.310', '1310'])
})

test('every cell has one end, and what has none is listed', () => {
  const row = ['a', 'b', 'c', undefined, 'd'].map((text) => (text === undefined ? undefined : { text }))
  const account = new Account([{ rows: [row], merged: [] }])
  account.read({ cell: 'A1' })
  account.wait({ cell: 'B1' })
  account.read({ cell: 'B1' })
  account.list({ cell: 'C1' }, 'c', 'odd')
  account.read({ cell: 'C1' })
  const { cells, odd } = account.close()
  expect(cells).toEqual({ held: 4, read: 1, waiting: 1, listed: 2 })
  expect(odd.map(({ cell }) => cell)).toEqual(['C1', 'E1'])
})
