import { describe, expect, it } from 'vitest'
import { exampleOutlook } from '../../fixtures/example-outlook.ts'
import { exampleData } from '../../fixtures/example-system.ts'
import { questionOf } from '../question.ts'
import { intervalOfShare, weeksAhead } from './chance.ts'
import { subjectsOf } from './subjects.ts'

const { asOf } = exampleData
const [nitrate] = subjectsOf(exampleOutlook(questionOf(exampleData), 'example'))
if (!nitrate) throw new Error('The example has no nitrate.')

describe('the chance of being in band', () => {
  it('is told for each whole week to come, as the mean over its days', () => {
    const { days } = nitrate.fan
    const inBand = days.map((day) => (day <= asOf + 7 ? 1 : day <= asOf + 10 ? 0.5 : 0))
    const weeks = weeksAhead({ ...nitrate, fan: { ...nitrate.fan, inBand } }, asOf)
    expect(weeks).toHaveLength(8)
    expect(weeks[0]).toEqual({ from: asOf, to: asOf + 7, chance: 1 })
    expect(weeks[1]?.chance).toBeCloseTo((3 * 0.5) / 7, 12)
    expect(weeks[7]?.chance).toBe(0)
  })

  it('is not told of what has no band', () => {
    const { inBand: _, ...fan } = nitrate.fan
    expect(weeksAhead({ ...nitrate, fan }, asOf)).toEqual([])
  })

  it('is the surer the more tanks count, and never quite sure', () => {
    // Wilson 1927, worked by hand: 8 of 10, z = 1.645
    const few = intervalOfShare(0.8, 10)
    expect(few.low).toBeCloseTo(0.541, 3)
    expect(few.high).toBeCloseTo(0.931, 3)
    const many = intervalOfShare(0.8, 100)
    expect(many.high - many.low).toBeLessThan((few.high - few.low) / 2)
    expect(intervalOfShare(1, 20).low).toBeLessThan(0.9)
    expect(intervalOfShare(1, 20).high).toBe(1)
  })
})
