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
