import { expect, test } from 'vitest'
import type { CaseFile } from '../case-file.ts'
import { withoutModel } from '../model-answers.ts'
import type { Question } from './answer.ts'
import { ladderAnswers } from './ladder.ts'

/** What is answered of a ladder with these measures and cautions. */
function answered(quantity: string, measures: readonly string[], words: readonly string[] = []) {
  const model = { ...withoutModel, ladder: () => ({ measures, cautions: ['palytoxin'] }) }
  const question: Question = { file: {} as CaseFile, check: { quantity }, model, words }
  return ladderAnswers[quantity]?.answer(question)
}

test('the first measure is the one beyond watching, by its other name too', () => {
  expect(answered('measure_first', ['wait', 'find_out', 'hand_removal_siphon', 'feed_less'])).toEqual({
    value: 'hand_removal_siphon',
    alsoCalled: ['hand_removal_siphon', 'hand_removal'],
  })
  expect(() => answered('measure_first', ['wait'])).toThrow('nothing beyond watching')
})

test('a measure is not offered where neither it nor what it is a way of stands on the ladder', () => {
  const words = ['hand_removal', 'lights_on', 'large_water_changes']
  expect(answered('measure_not', ['hand_removal_siphon', 'water_change_large'], words)).toEqual({
    value: ['lights_on'],
    anyOrder: true,
  })
})

test('medicine is a mistake where it stands before all else, and none after what is gentler', () => {
  const words = ['antibiotic_first']
  expect(answered('measure_not', ['wait', 'ask_veterinarian', 'hand_removal'], words)).toMatchObject({
    value: [],
  })
  expect(answered('measure_not', ['wait', 'hand_removal', 'ask_veterinarian'], words)).toMatchObject({
    value: words,
  })
})

test('the cautions are those of the page', () => {
  expect(answered('caution_shown', [])).toEqual({ value: ['palytoxin'], anyOrder: true })
})
