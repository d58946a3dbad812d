import fc from 'fast-check'
import { expect, test } from 'vitest'
import { answerFaults } from './testing/answer-faults.ts'
import { placeOfText, typedText } from './testing/typed-text.ts'

test('whatever is typed gives a finite value, a question with answers that read, or words', () => {
  fc.assert(
    fc.property(typedText, placeOfText, (text, place) => {
      expect(answerFaults(text, place)).toEqual([])
    }),
    { numRuns: 2000, seed: 7 },
  )
})
