import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readFigure } from './number-text.ts'

test('figures are read as keepers write them', () => {
  const exact = (value: number) => ({ is: 'exact', value })
  const read = (text: string) => readFigure(text).stated
  expect(read('1,5')).toEqual(exact(1.5))
  expect(read('1.5')).toEqual(exact(1.5))
  expect(read('.05')).toEqual(exact(0.05))
  expect(read('1e-3')).toEqual(exact(0.001))
  expect(read('−2')).toEqual(exact(-2))
  expect(read('<0.03')).toEqual({ is: 'below', limit: 0.03 })
  expect(read('< 0,03')).toEqual({ is: 'below', limit: 0.03 })
  expect(read('<.02')).toEqual({ is: 'below', limit: 0.02 })
  expect(read('>50')).toEqual({ is: 'above', limit: 50 })
  expect(read('~2')).toEqual({ is: 'about', value: 2 })
  expect(read('about 2')).toEqual({ is: 'about', value: 2 })
  for (const span of ['0.03-0.05', '0,03 – 0,05', '.03..0.05', '0.03 to 0.05'])
    expect(read(span), span).toEqual({ is: 'between', low: 0.03, high: 0.05 })
  for (const nothing of ['ND', 'nd', 'n.d.', 'n.n.', 'n. n.', 'not detected', 'undetectable'])
    expect(read(nothing), nothing).toEqual({ is: 'not detected' })
})

test('what follows the figure is the unit', () => {
  expect(readFigure('5 mg/L NO3').rest).toBe('mg/L NO3')
  expect(readFigure('0.05mg/L').rest).toBe('mg/L')
  expect(readFigure('ND ppm').rest).toBe('ppm')
  expect(readFigure('5-10 ppm').rest).toBe('ppm')
})

test('a mark between thousands is read only when told', () => {
  expect(readFigure('1.310').stated).toEqual({ is: 'exact', value: 1.31 })
  expect(readFigure('1.310', { thousands: '.' }).stated).toEqual({ is: 'exact', value: 1310 })
  expect(readFigure('1.310,5', { thousands: '.' }).stated).toEqual({ is: 'exact', value: 1310.5 })
  expect(readFigure('1,310.5', { thousands: ',' }).stated).toEqual({ is: 'exact', value: 1310.5 })
  expect(readFigure('12,5', { thousands: '.' }).stated).toEqual({ is: 'exact', value: 12.5 })
  expect(readFigure('1.310,5').wrong).toBe('not-a-number')
  expect(readFigure('1.31', { thousands: '.' }).wrong).toBe('not-a-number')
})

test('thousands parted by spaces or apostrophes are read only when told', () => {
  const value = (text: string, thousands: ' ' | "'") => readFigure(text, { thousands }).stated
  expect(value('1 310 mg/L', ' ')).toEqual({ is: 'exact', value: 1310 })
  expect(value('1\u202f310,5', ' ')).toEqual({ is: 'exact', value: 1310.5 })
  expect(value('12’345.6', "'")).toEqual({ is: 'exact', value: 12345.6 })
  expect(value('1 200-1 300', ' ')).toEqual({ is: 'between', low: 1200, high: 1300 })
  expect(readFigure('1 31', { thousands: ' ' }).wrong).toBe('not-a-number')
})

test('a comma before three digits is doubted where nothing tells what it is', () => {
  for (const text of ['1,310', '<1,310', '1,310-1,320', '900-1.310,'])
    if (!text.endsWith(',')) expect(readFigure(text).doubt, text).toBe('comma')
  for (const text of ['1.310', '0,035', '1,31', '1310', '1,3105', ',310'])
    expect(readFigure(text).doubt, text).toBeUndefined()
  expect(readFigure('1,310', { decimal: ',' })).toMatchObject({ stated: { value: 1.31 } })
  expect(readFigure('1,310', { decimal: ',' }).doubt).toBeUndefined()
  expect(readFigure('1,310', { decimal: '.' }).wrong).toBe('not-a-number')
})

test('one figure in many characters is one figure', () => {
  const minus = ['-2', '−2', '–2', '‐2', '‑2', '‒2', '—2', '－2', '﹣2']
  for (const text of minus) expect(readFigure(text).stated, text).toEqual({ is: 'exact', value: -2 })
  for (const text of ['１，５', '1,5\u00a0', '\u200b1,5', '\ufeff1.5'])
    expect(readFigure(text).stated, text).toEqual({ is: 'exact', value: 1.5 })
  for (const text of ['≤2', '⩽2', '<=2', '< 2', '＜2', '<\u00a02'])
    expect(readFigure(text).stated, text).toEqual({ is: 'below', limit: 2 })
  expect(readFigure('-0').stated).toEqual({ is: 'exact', value: 0 })
})

test('digits of other scripts and fractions are refused, not read in part', () => {
  for (const text of ['٣', '½', '²']) expect(readFigure(text).wrong, text).toBe('not-a-number')
})

test('half figures are refused, not cut', () => {
  for (const text of ['foo', '1.2.3', '5 6', '1 000', "1'000", '<5-10', '1e999', '--5', '5-', '5.'])
    expect(readFigure(text).wrong, text).toBe('not-a-number')
  expect(readFigure('10-5').wrong).toBe('range-reversed')
  expect(readFigure('  ').wrong).toBe('empty')
})

test('every finite number is read back from its own text, with dot or comma', () => {
  const figure = fc.double({ noNaN: true, noDefaultInfinity: true })
  fc.assert(
    fc.property(figure, fc.boolean(), (value, comma) => {
      const text = comma ? String(value).replace('.', ',') : String(value)
      expect(readFigure(text).stated).toEqual({ is: 'exact', value: value === 0 ? 0 : value })
    }),
    { seed: 4 },
  )
})
