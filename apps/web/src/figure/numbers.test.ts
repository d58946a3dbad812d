import { describe, expect, it } from 'vitest'
import { figureText } from './computed.ts'
import { plain } from './numbers.ts'

const text = (value: number, low: number, high: number, unit = 'mg/L NO3') =>
  figureText({ value, low, high, unit })

describe('a computed figure', () => {
  it('tells the far end of a skewed interval more coarsely than the near one', () => {
    expect(text(0.118, 0.031, 8.13, 'mg/L PO4')).toBe('0.12 (0.03 to 8) mg/L PO4')
    expect(text(9.2, 1.1, 122)).toBe('9 (1 to 120) mg/L NO3')
  })

  it('that lies all but on one end of its interval is not told to the last digit', () => {
    expect(text(137.277512, 137.277511, 301_200, 'mg N')).toBe('100 (100 to 300\u202f000) mg N')
    expect(text(0.5, 0.4999999, 0.9)).toBe('0.5000 (0.5000 to 0.9) mg/L NO3')
  })

  it('is written without an interval where it has no spread', () => {
    expect(text(12.24, 12.24, 12.24, 'mg N')).toBe('12.2 mg N')
    expect(text(12.24, 12.24 - 1e-12, 12.24 + 1e-12, 'mg N')).toBe('12.2 mg N')
  })

  it('shows no more digits than its interval bears', () => {
    expect(text(4.123, 2.61, 5.99)).toBe('4.1 (2.6 to 6.0) mg/L NO3')
    expect(text(0.0512, 0.031, 0.0894, 'mg/L PO4')).toBe('0.051 (0.031 to 0.089) mg/L PO4')
    expect(text(1243, 1107, 1402, 'mg N')).toBe('1240 (1110 to 1400) mg N')
  })

  it('writes a fall with a true minus and thousands with a thin space', () => {
    expect(text(-720, -1090, -360, 'mg P')).toBe('\u2212700 (\u22121100 to \u2212400) mg P')
    expect(text(16_140, 14_170, 18_300, 'mg N')).toBe('16\u202f100 (14\u202f200 to 18\u202f300) mg N')
  })

  it('that is less than its last digit says so, and no end of it is a row of noughts', () => {
    expect(text(0.09, 0.0004, 3.1, '%')).toBe('0.09 (0 to 3) %')
    expect(text(0.00001, 0, 1.7, 'g')).toBe('under 0.0001 (0 to 1.7) g')
    const told = { low: 0, unit: '%', least: 1 }
    expect(figureText({ ...told, value: 0.09, high: 3.1 })).toBe('under 1 (0 to 3) %')
    expect(figureText({ ...told, value: 0.09, high: 1.6 })).toBe('under 1 (0 to 2) %')
    expect(figureText({ ...told, value: 0.09, high: 0.3 })).toBe('under 1 %')
    expect(text(32, 0.2, 178, 'mg')).toBe('30 (0 to 180) mg')
  })

  it('writes nought without a sign', () => {
    expect(text(-0.0001, -1, 1, 'mg P')).toBe('0.0 (\u22121.0 to 1.0) mg P')
  })

  it('writes what was said as it was said', () => {
    expect([plain(30), plain(0.5), plain(14), plain(0.03)]).toEqual(['30', '0.5', '14', '0.03'])
  })
})
