import { expect, test } from 'vitest'
import { gathered } from './gathered.ts'

test('what holds of several animals is said once, ahead of what holds of one', () => {
  const copper = 'Not with copper.'
  expect(
    gathered([
      { name: 'urchin', says: ['Wedges itself in gaps.', copper] },
      { name: 'snail', says: [copper, 'Drip in slowly.'] },
    ]),
  ).toEqual([
    { names: ['urchin', 'snail'], says: [copper] },
    { names: ['urchin'], says: ['Wedges itself in gaps.'] },
    { names: ['snail'], says: ['Drip in slowly.'] },
  ])
  expect(gathered([])).toEqual([])
})
