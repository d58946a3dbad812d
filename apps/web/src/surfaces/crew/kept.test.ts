import type { Event } from '@holdfast/ecosystem'
import { expect, test } from 'vitest'
import { keptPlan } from './kept.ts'

const [trochus, urchin] = ['Trochus histrio', 'Mespilia globulus']
const plan = {
  id: '0193-b',
  at: '2026-03-01',
  body: {
    asOf: 100.9,
    wishes: {},
    byHand: [],
    leave: [{ taxon: urchin, count: 1 }],
    steps: [
      { after_days: 0, animals: [{ taxon: trochus, count: 2 }] },
      { after_days: 21, animals: [{ taxon: trochus, count: 2 }] },
    ],
  },
}
const came = (day: number, count: number, entry: string): Event => ({
  day,
  kind: 'animals added',
  taxon: trochus,
  count,
  entry,
})
const logged = (events: readonly Event[]) =>
  keptPlan(plan, events).steps.map(({ animals: [first] }) => first?.logged)

test('who came after a plan counts for its first steps first, and no more than they want', () => {
  expect(logged([])).toEqual([0, 0])
  expect(logged([came(103, 3, 'x')])).toEqual([2, 1])
  expect(logged([came(103, 3, 'x'), came(130, 9, 'y')])).toEqual([2, 2])
})

test('of the day of the plan itself only what was written after it counts', () => {
  expect(logged([came(100.5, 2, '0193-a')])).toEqual([0, 0])
  expect(logged([came(100.5, 2, '0193-c')])).toEqual([2, 0])
  expect(logged([came(90, 2, '0193-c')])).toEqual([0, 0])
})

test('whoever was given away or lost counts for those to be given away', () => {
  const lost: Event = { day: 101, kind: 'animals lost', taxon: urchin, count: 1 }
  expect(keptPlan(plan, [lost]).leave).toEqual([{ taxon: urchin, count: 1, logged: 1 }])
})
