import { expect, test } from 'vitest'
import { shortDayText } from './days.ts'
import { firstMembersOver } from './question.ts'
import { spanOf } from './span.ts'

const log = { from: 18_600, asOf: 20_425 }

test('a span looks back from the last day of the log, and never before its first', () => {
  expect(spanOf('365', log)).toEqual({ from: 20_060, to: 20_425 })
  expect(spanOf('365', { from: 20_400, asOf: 20_425 })).toEqual({ from: 20_400, to: 20_425 })
  expect(spanOf('all', log)).toEqual({ from: 18_600, to: 20_425 })
})

test('the first answer of a long span is of fewer members, and of five years of few', () => {
  expect([90, 365, 1825, 7300].map((days) => firstMembersOver({ from: 0, to: days }))).toEqual([16, 5, 4, 4])
})

test('an axis of years names the year, for the same day comes again', () => {
  expect(shortDayText(20_425, 'UTC', spanOf('90', log))).toBe('3 Dec')
  expect(shortDayText(20_425, 'UTC', spanOf('all', log))).toBe('Dec 2025')
})
