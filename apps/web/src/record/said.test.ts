import { expect, it } from 'vitest'
import { said } from './said.ts'

const survey = (algae: string) => ({
  entry: {
    kind: 'survey',
    body: { surface: 'rock_face', algae, cover: 0.1, text: '', typed: {} },
  } as const,
  says: `${algae} on 10 % of rock_face`,
})

it('a survey says what grows by its name, be its key one word or two', () => {
  expect(said(survey('hair_green'))).toBe('green hair algae on 10 % of rock face')
  expect(said(survey('bubble'))).toBe('bubble algae on 10 % of rock face')
})

it("the keeper's own words stand as they were written", () => {
  const text = 'pump v1.2 on rock_face'
  expect(said({ entry: { kind: 'note', body: { text } }, says: text })).toBe(text)
  const { entry } = survey('bubble')
  const own = { ...entry, body: { ...entry.body, text: 'bubble_algae, a few' } }
  expect(said({ entry: own, says: 'bubble_algae, a few' })).toBe('bubble_algae, a few')
})
