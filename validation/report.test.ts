import { expect, test } from 'vitest'
import { figuresOf, quotesIn } from './quoted-figures.ts'
import { isSealed, presentReport } from './report.ts'

test('a report that was edited is found out', () => {
  const check = { name: 'a name', outcome: 'failed', says: '3 % off' } as const
  const basis = { commit: 'abc', clean: true, model: '0123456789ab', seed: 1 }
  const report = presentReport(basis, { cycles: [check] }, new Date('1999-01-02T03:04:05Z'))
  expect(report).toContain('0 passed, 1 failed')
  expect(report).toContain('model 0123456789ab, seed 1')
  expect(isSealed(report)).toBe(true)
  expect(isSealed(report.replace('3 %', '1 %'))).toBe(false)
})

test('a page that quotes figures of another model fails, one without figures is not asked', () => {
  const now = '0123456789ab'
  expect(quotesIn('a.md', 'Words only.', now)).toEqual([])
  expect(quotesIn('a.md', figuresOf(now), now)).toMatchObject([{ outcome: 'passed' }])
  expect(quotesIn('a.md', figuresOf('ba9876543210'), now)).toMatchObject([{ outcome: 'failed' }])
})
