import type { System } from '@holdfast/ecosystem'
import type { OutlookQuestion } from '@holdfast/inference'
import { expect, test } from 'vitest'
import { untold, withEverPresent } from './ever-present.ts'
import { drawnSystem } from './testing/drawn.ts'

const system: System = drawnSystem({ volume_L: 300 })

const asked = (
  algae: System['algae'],
  observations: OutlookQuestion['observations'] = [],
): OutlookQuestion => ({
  system: { ...system, algae },
  observations,
  events: [],
  from: 0,
  asOf: 30,
  horizonDays: 1,
  members: 4,
  seed: 1,
})

const surface = system.surfaces[0].id

test('where only a nuisance is told of, a film and a turf stand on every lit surface', () => {
  const wider = withEverPresent(asked([{ kind: 'hair_green', surface, cover: 0.3 }]))
  const added = wider.system.algae.slice(1)
  const lit = wider.system.surfaces.filter(
    ({ light_umol_m2_s, light_h_per_day }) => light_umol_m2_s * light_h_per_day > 0,
  )
  expect(added.map((one) => `${one.kind} ${one.surface}`)).toEqual(
    ['film_green', 'turf'].flatMap((kind) => lit.map(({ id }) => `${kind} ${id}`)),
  )
})

test('what a survey or the description tells of is left as it was told', () => {
  const survey = {
    day: 3,
    quantity: 'cover',
    value: 0.2,
    belowDetection: false,
    surface,
    algae: 'turf',
  } as const
  const told = asked([{ kind: 'film_diatom', surface, cover: 0.3 }], [survey])
  expect(untold(told)).toEqual([])
  expect(withEverPresent(told)).toBe(told)
})
