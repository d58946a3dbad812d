import { expect, it } from 'vitest'
import { exampleStartUp } from '../../fixtures/example-start-up.ts'
import { drawStart } from './marks.ts'
import { peakSentence } from './words.ts'

const writing = { date: (day: number) => `day ${day - exampleStartUp.from}`, number: String }

it('puts every peak and the first animals between the titles and the edge, later ones further right', () => {
  const { rows, left, right, today } = drawStart(exampleStartUp, 360)
  const middles = rows.flatMap(({ middle }) => (middle === undefined ? [] : [middle]))
  expect(middles.length).toBe(4)
  for (const x of middles) expect(x >= left && x <= right).toBe(true)
  const [ammonia = 0, nitrite = 0, nitrate = 0] = middles
  expect([ammonia, today, nitrite, nitrate]).toEqual([ammonia, today, nitrite, nitrate].sort((a, b) => a - b))
  expect(rows.every(({ arrow }) => arrow === undefined)).toBe(true)
})

it('points beyond the picture where the day of the first animals is not in sight', () => {
  const ready = { low: exampleStartUp.asOf + 20, middle: Infinity, high: Infinity }
  const { rows, right } = drawStart({ ...exampleStartUp, ready }, 360)
  const animals = rows.at(-1)
  expect(animals?.middle).toBeUndefined()
  expect(animals?.high).toBe(right)
  expect(animals?.arrow).toBeGreaterThan(right)
})

it('does not call the last day that it looks at a peak', () => {
  const [nitrate] = exampleStartUp.peaks.slice(-1)
  if (nitrate === undefined) throw new Error('The example has no peak of nitrate.')
  const days = [exampleStartUp.from, nitrate.day.middle]
  const course = { quantity: 'nitrate', unit: 'mg/L NO3', days, bands: [] } as const
  const short = { ...exampleStartUp, courses: [course] }
  expect(peakSentence(nitrate, exampleStartUp, writing)).toMatch(/^Nitrate will stand highest about day 61/)
  expect(peakSentence(nitrate, short, writing)).toMatch(/^Nitrate still rises on day 61/)
  expect(drawStart(short, 360).rows[2]?.middle).toBeUndefined()
})
