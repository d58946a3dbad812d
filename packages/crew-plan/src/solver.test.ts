import { expect, test } from 'vitest'
import { lpText } from './lp-text.ts'
import { ProgrammeBuilder } from './programme.ts'
import { loadSolver } from './solver.ts'

const exactly = { gap: 0, seconds: 10 }

/** Cheapest whole numbers of two animals of 2 and 3 that eat 1 and 2 a day, of which 5 must be eaten. */
function small(budget: number): ProgrammeBuilder {
  const programme = new ProgrammeBuilder()
  const small = programme.column({ cost: 2, whole: true })
  const large = programme.column({ cost: 3, upper: 2, whole: true })
  programme.column({})
  programme.atLeast(
    'cover',
    [
      [small, 1],
      [large, 2],
    ],
    5,
  )
  programme.atMost(
    'budget',
    [
      [small, 2],
      [large, 3],
    ],
    budget,
  )
  return programme
}

test('a programme small enough to count by hand has the answer that one counts', async () => {
  const solver = await loadSolver()
  const solved = solver(small(100), exactly)
  expect(solved).toMatchObject({ status: 'solved', values: [1, 2, 0], proved: true })
  expect(solved.status === 'solved' ? solved.cost : 0).toBeCloseTo(8, 9)
})

test('limits that clash have no answer', async () => {
  const solver = await loadSolver()
  expect(solver(small(7), exactly)).toEqual({ status: 'infeasible' })
})

test('the text of a programme names every column in order and each end of a row', () => {
  const text = lpText(small(7))
  expect(text).toContain('cost: + 2 c0 + 3 c1 + 0 c2')
  expect(text).toContain('r0l: + 1 c0 + 2 c1 >= 5')
  expect(text).toContain('r1u: + 2 c0 + 3 c1 <= 7')
  expect(text).toContain('0 <= c1 <= 2')
})
