import { expect, test } from 'vitest'
import { reef } from '../testing/systems.ts'
import { momentsOf } from './logged.ts'

test('a change of light without a surface is one of every surface under a lamp, and leaves the hours alone', () => {
  const [first, ...others] = reef.surfaces
  const system = { ...reef, surfaces: [{ ...first, light_umol_m2_s: 0 }, ...others] }
  const moments = momentsOf({ day: 3, kind: 'light change', light_umol_m2_s: 90 }, system)
  const lit = Object.fromEntries(others.map(({ id }) => [`light ${id}`, 90]))
  expect(moments).toEqual([{ day: 3, set: lit }])
})

test('a blackout sets the hours of light to none', () => {
  const [surface] = reef.surfaces.map(({ id }) => id)
  expect(momentsOf({ day: 3, kind: 'light change', surface, light_h_per_day: 0 }, reef)).toEqual([
    { day: 3, set: { [`light hours ${surface}`]: 0 } },
  ])
})

test('a change of one feed leaves the others as they are', () => {
  const feeds = [reef.feeds[0], { ...reef.feeds[0], kind: 'thawed shrimp' }]
  const event = { day: 3, kind: 'feed change', g_per_day: 2, feed: 'thawed shrimp' } as const
  const [moment] = momentsOf(event, { ...reef, feeds })
  expect('set' in moment && Object.values(moment.set)).toEqual([2])
  const [all] = momentsOf({ day: 3, kind: 'feed change', g_per_day: 2 }, { ...reef, feeds })
  expect('set' in all && Object.values(all.set)).toEqual([1, 1])
})
