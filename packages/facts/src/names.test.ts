import { expect, test } from 'vitest'
import { algaeKinds } from './algae-kind.ts'
import { named } from './names.ts'

test('every kind of algae is read by what it is called', () => {
  for (const { key, title } of algaeKinds()) expect(named(key)).toBe(title)
})

test('in a text keys become words, and words stay as they are', () => {
  expect(named('hair_green on rock_face, first patch')).toBe('green hair algae on rock face, first patch')
  expect(named('turf scrubber')).toBe('turf scrubber')
})
