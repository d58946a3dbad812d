import { expect, test } from 'vitest'
import { figure, percent } from './figure.ts'

test.each([
  [4.123, 2.61, 5.99, '4.1 (2.6 to 6.0)'],
  [-0.02, -0.5, 0.5, '0.0 (-0.5 to 0.5)'],
  [143, 52, 244, '140 (50 to 240)'],
  [0.0301, 0.0242, 0.0418, '0.030 (0.024 to 0.042)'],
  [-0.02, -0.3, 0.4, '-0.02 (-0.30 to 0.40)'],
  [48, 48, 48, '48'],
  [0, 0, 0, '0'],
])('%d from %d to %d bears no more digits than the near end of its interval', (value, low, high, text) => {
  expect(figure({ value, low, high })).toBe(text)
})

test('small shares keep a digit, large ones do not', () => {
  expect([percent(0.0312), percent(0.484), percent(1), percent(-0.0001)]).toEqual([
    '3.1 %',
    '48 %',
    '100 %',
    '0.0 %',
  ])
})
