import type { Event, Observation, System } from '@holdfast/ecosystem'
import { reef } from '@holdfast/ecosystem/testing/systems'
import { expect, test } from 'vitest'
import { surveyed } from './surveyed.ts'

const cover = (day: number, surface: string, value: number): Observation => ({
  day,
  quantity: 'cover',
  surface,
  algae: 'hair_green',
  value,
  belowDetection: false,
})
const asked = (
  observations: readonly Observation[],
  events: readonly Event[] = [],
  system: System = reef,
) => ({
  system,
  observations,
  events,
})
const at = (system: System, surface: string) =>
  system.algae.find((algae) => algae.kind === 'hair_green' && algae.surface === surface)?.cover

test('the survey nearest to the first day tells the cover, and the description where there is none', () => {
  const found = surveyed(asked([cover(10, 'glass', 0.2), cover(50, 'glass', 0.6)]), 40)
  expect(at(found, 'glass')).toBe(0.6)
  expect(at(found, 'rock_face')).toBe(0.1)
  expect(at(surveyed(asked([cover(10, 'rock_face', 0.3)]), 40), 'rock_face')).toBe(0.3)
})

test('a kind that nobody saw is not there', () => {
  expect(surveyed(asked([], [], { ...reef, algae: [] }), 0).algae).toEqual([])
})

test('an animal that came later has its place from the beginning, with none of it there', () => {
  const came: Event = { day: 5, kind: 'animals added', taxon: 'Nerita tessellata', count: 3 }
  const { animals } = surveyed(asked([], [came, { ...came, day: 9 }]), 0)
  expect(animals.filter(({ taxon }) => taxon === 'Nerita tessellata')).toMatchObject([{ count: 0 }])
  expect(animals).toHaveLength(reef.animals.length + 1)
})
