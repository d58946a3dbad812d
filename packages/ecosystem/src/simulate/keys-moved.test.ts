import { expect, test } from 'vitest'

import { reef } from '../testing/systems.ts'
import { keysMoved } from './keys-moved.ts'
import { timeline } from './timeline.ts'

const span = { system: reef, from: 0, to: 60, asOf: 60 }
const told = Object.entries(keysMoved).flatMap(([equipment, keys]) => keys.map((key) => [equipment, key]))
const moments = (equipment: string, key: string) =>
  timeline({ ...span, events: [{ day: 10.5, kind: 'equipment change', equipment, changes: { [key]: 3 } }] })
const withoutEmpty = (found: ReturnType<typeof timeline>) =>
  found.filter((moment) => !('set' in moment) || Object.keys(moment.set).length > 0)

test.each(told)('a change of %s, %s, that is said to move the model moves it', (equipment, key) => {
  expect(withoutEmpty(moments(equipment, key))).not.toEqual(timeline({ ...span, events: [] }))
})

test('a change of what no process reads moves nothing', () => {
  expect(withoutEmpty(moments('heater', 'running'))).toEqual(timeline({ ...span, events: [] }))
})
