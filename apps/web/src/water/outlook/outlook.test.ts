import { describe, expect, it } from 'vitest'
import { sentenceText } from '../../figure/sentence.ts'
import { exampleOutlook } from '../../fixtures/example-outlook.ts'
import { exampleData } from '../../fixtures/example-system.ts'
import type { Planned } from '../planned.ts'
import { questionOf } from '../question.ts'
import { ceilingOf, drawFan, hookLength } from './fan.ts'
import { subjectsOf } from './subjects.ts'
import { fanSentence } from './words.ts'

const answer = exampleOutlook(questionOf(exampleData), 'example')
const subjects = subjectsOf(answer)
const subjectOf = (quantity: string) => {
  const found = subjects.find(({ fan }) => fan.quantity === quantity)
  if (!found) throw new Error(`The example has no ${quantity}.`)
  return found
}
const { asOf, from } = exampleData
const shown = { from, to: asOf + 56 }
const drawn = (quantity: string, planned: readonly Planned[] = []) => {
  const subject = subjectOf(quantity)
  const ceiling = ceilingOf(subject, shown)
  return drawFan({ subject, shown, asOf, planned, width: 700, height: 230, ceiling })
}

describe('a fan', () => {
  it('hangs a hook from the limit for a reading below detection, and draws no point there', () => {
    const { hooks, points, y } = drawn('phosphate')
    expect(hooks).toHaveLength(3)
    expect(points).toHaveLength(9)
    const limit = y(0.03)
    expect(hooks[0]?.path).toContain(`,${limit}h8`)
    expect(hooks[0]?.path).toContain(`v${hookLength - 4}`)
  })

  it('draws a reading between the ends of its error, the higher value higher up', () => {
    for (const point of drawn('nitrate').points) {
      expect(point.top).toBeLessThan(point.y)
      expect(point.y).toBeLessThan(point.bottom)
    }
  })

  it('writes thousands on its axis as the figures do, and never with a comma', () => {
    const subject = subjectOf('nitrate')
    const texts = (ceiling: number) =>
      drawFan({ subject, shown, asOf, planned: [], width: 700, height: 230, ceiling }).valueTicks.map(
        ({ text }) => text,
      )
    expect(texts(2000)).toEqual(['0', '500', '1000', '1500', '2000'])
    expect(texts(20_000).at(-1)).toBe('20\u202f000')
    expect(texts(0.4)).toEqual(['0.0', '0.1', '0.2', '0.3', '0.4'])
  })

  it('marks what is planned at its days and nothing outside what is shown', () => {
    const at = (day: number): Planned => ({ day, kind: 'water', says: 'Water change, 30 L' })
    const { planned, x } = drawn('nitrate', [at(asOf + 7), at(asOf + 21), at(asOf + 400)])
    expect(planned.map((tick) => tick.x)).toEqual([x(asOf + 7), x(asOf + 21)])
  })

  it('puts today where the past meets the future', () => {
    const { today, x, plot } = drawn('nitrate')
    expect(today).toBe(x(asOf))
    expect(today).toBeGreaterThan(plot.left)
    expect(today).toBeLessThan(plot.right)
  })

  it('keeps every band within the plot', () => {
    const { wide, plot } = drawn('nitrate')
    const heights = [...wide.matchAll(/,(-?[\d.]+)/g)].map(([, y]) => Number(y))
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(plot.top)
    expect(Math.max(...heights)).toBeLessThanOrEqual(plot.bottom)
  })
})

describe('the sentence over a fan', () => {
  const ground = { answer, data: exampleData }

  it('says the last day of the log, four weeks on, units, and the band', () => {
    expect(sentenceText(fanSentence(subjectOf('nitrate'), ground))).toBe(
      'Nitrate: 10.0 (8.2 to 12.2) mg/L NO3 on 28 Nov 2025 and, kept as it is, 12 (7 to 20) mg/L NO3 four weeks later. More than half of that lies above where corals want it, 1 to 10 mg/L\u00a0NO3. Chance of being in band in week 8: 20 (10 to 36) %.',
    )
  })

  it('says cover as per cent of a named place', () => {
    expect(sentenceText(fanSentence(subjectOf('cover'), ground))).toContain(
      'Cover of green hair algae on rock face: 16 (11 to 23) % on 28 Nov 2025',
    )
  })
})
