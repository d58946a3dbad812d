import { expect, test } from 'vitest'
import { takenInWords } from './taken-in-words.ts'

const taken = { madeAt: '2026-03-01T12:00:00Z', added: 12, already: 0, differing: [], leftOut: [] }

test('a copy that came back says what was new, what was here, and what could not come', () => {
  expect(takenInWords(taken)).toBe('The copy of 1 Mar 2026 is in: 12 entries new.')
  expect(takenInWords({ ...taken, added: 0, already: 1, differing: ['a'], leftOut: ['b', 'c'] })).toBe(
    'The copy of 1 Mar 2026 is in: 0 entries new; one entry in the log already. Of those, one says something else here; what was here stays. Before it was made, 2 files had been lost.',
  )
})
