import { expect, test } from 'vitest'
import { type FigureSigns, written, writtenAlone } from './written.ts'

const point: FigureSigns = { decimal: '.', minus: '-', thousands: '' }
const comma: FigureSigns = { decimal: ',', minus: '−', thousands: ' ' }

test.each([
  [4.123, 2.61, 5.99, '4.1 2.6 6.0', '4,1 2,6 6,0'],
  [9.2, 1.1, 122, '9 1 120', '9 1 120'],
  [-12_345.6, -13_100, -11_900, '-12300 -13100 -11900', '−12 300 −13 100 −11 900'],
  [0.0301, 0.0242, 0.0418, '0.030 0.024 0.042', '0,030 0,024 0,042'],
  [48, 48, 48, '48 48 48', '48 48 48'],
])(
  '%d from %d to %d has the digits that its interval bears, in the signs of its reader',
  (value, low, high, inPoints, inCommas) => {
    expect(Object.values(written({ value, low, high }, point)).join(' ')).toBe(inPoints)
    expect(Object.values(written({ value, low, high }, comma)).join(' ')).toBe(inCommas)
  },
)

test('a number alone has three digits, be it large or small', () => {
  expect([1_234_567, 0.000_123_45, 0, -0.5].map((value) => writtenAlone(value, point))).toEqual([
    '1230000',
    '0.000123',
    '0',
    '-0.5',
  ])
})
