import { expect, it } from 'vitest'
import { actsFound } from './every-act.ts'

const acts = [
  { words: 'Log: Water change', address: '?a' },
  { words: 'Go to Water', address: '?b' },
]

it('an act is found by parts of its words in any order', () => {
  expect(actsFound(acts, 'cha wat')).toEqual([acts[0]])
})

it('nothing typed offers every act', () => {
  expect(actsFound(acts, '')).toEqual(acts)
})
