import { expect, test } from 'vitest'
import { outflowLists } from './outflow-lists.ts'
import { row } from './row.ts'

/** Flows between a few quick states, and some that go both ways; -1 is outside. */
const listsOf = (ends: readonly (readonly [number, number])[], exchanges: readonly number[]) => {
  const states = 1 + Math.max(...ends.flat())
  const inOrder = (length: number): Int32Array => Int32Array.from({ length }, (_, k) => k)
  return outflowLists(
    {
      states,
      from: Int32Array.from(ends, ([from]) => from),
      to: Int32Array.from(ends, ([, to]) => to),
      floored: new Uint8Array(states),
      tolerance: new Float64Array(states).fill(1),
      quickStates: new Uint8Array(states).fill(1),
      quickFlows: new Uint8Array(ends.length).fill(1),
      exchanges,
    },
    inOrder(states),
    inOrder(ends.length),
    states,
  )
}

test('an account without exchanges, one where they begin and one where they end are listed apart', () => {
  // Food becomes phosphate; phosphate is bound and given back, and is taken out; what is bound wears off.
  const { exchanges, outflows, hubOutflows, farOutflows } = listsOf(
    [
      [0, 1],
      [1, 2],
      [1, -1],
      [2, -1],
    ],
    [1],
  )
  const nowhere = 3
  expect(exchanges).toEqual([1, 1, 2].map((line) => row * line))
  expect(outflows).toEqual([0, 1, 0, row, -1])
  expect(hubOutflows).toEqual([row, 1, 2 * row, nowhere * row, -1])
  expect(farOutflows).toEqual([2 * row, 1, 3 * row, nowhere * row, -1])
})

test.each([
  [
    'beside an exchange',
    [
      [0, 1],
      [0, 1],
    ],
    [0],
    'A flow runs beside an exchange.',
  ],
  [
    'a second exchange to the same end',
    [
      [0, 2],
      [1, 2],
    ],
    [0, 1],
    'Two exchanges end at one state.',
  ],
  ['an exchange with outside', [[0, -1]], [0], 'An exchange ends at no quick state.'],
  [
    'a chain of exchanges',
    [
      [0, 1],
      [1, 2],
    ],
    [0, 1],
    'An exchange begins where another ends.',
  ],
] as const)('%s is refused, for what it moves would not all arrive', (_, ends, exchanges, says) => {
  expect(() => listsOf(ends, exchanges)).toThrow(says)
})
