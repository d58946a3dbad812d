import type { Surface } from '@holdfast/ecosystem'
import { ordinaryReef } from '@holdfast/ecosystem/testing/ordinary-reef'
import { describe, expect, test } from 'vitest'
import { reached } from './reached.ts'
import { presentOf } from './testing/present-of.ts'

const reef = ordinaryReef(3)
const snail = 'Trochus histrio'
const overflow: Surface = { ...reef.surfaces[0], id: 'overflow', kind: 'plumbing_overflow', enclosed: true }
const places = reached(
  presentOf({
    ...reef,
    surfaces: [...reef.surfaces, overflow],
    animals: [...reef.animals, { kind: 'snail', taxon: snail, count: 6, role: 'grazer' }],
  }),
)

describe('six snails in 130 L', () => {
  test('get to the open glass and eat of its film', () => {
    const glass = places.find(
      ({ surface, patch, kind }) => surface === 'glass' && patch === 'open' && kind === 'film_green',
    )
    expect(glass?.reachedBy).toEqual([snail])
    expect(glass?.eaten.map(({ taxon }) => taxon)).toEqual([snail])
  })

  test('get nowhere in an overflow without a slot, and all that grows there is left', () => {
    const behind = places.filter(({ surface }) => surface === 'overflow')
    expect(behind.length).toBeGreaterThan(0)
    for (const { reachedBy, eaten, grows_g_week, left_g_week } of behind) {
      expect(reachedBy).toEqual([])
      expect(eaten).toEqual([])
      expect(left_g_week).toBeCloseTo(grows_g_week, 9)
    }
  })

  test('eat nowhere that they do not get to', () => {
    for (const { reachedBy, eaten } of places)
      for (const { taxon } of eaten) expect(reachedBy).toContain(taxon)
  })
})
