import { catalogueAlone, grazers, surfaceKinds } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { patches } from '../accounts/index.ts'
import type { Surface } from '../system.ts'
import { plate } from '../testing/systems.ts'
import { passes, reaches } from './reach.ts'

const reached = (taxon: string, surface: Surface): readonly boolean[] =>
  patches.map((patch) => reaches(surface, taxon, patch, undefined, catalogueAlone))

describe('patches', () => {
  test('are reached in the order open, half hidden, hidden by every animal on every kind of surface', () => {
    const wrong = grazers().flatMap(({ taxon }) =>
      surfaceKinds()
        .map(({ key }) => ({ key, of: reached(taxon, { ...plate, kind: key }) }))
        .filter(({ of: [open, halfHidden, hidden] }) => (hidden && !halfHidden) || (halfHidden && !open))
        .map(({ key }) => `${taxon} on ${key}`),
    )
    expect(wrong).toEqual([])
  })

  // Rock faces are open to 0.65, half hidden to 0.85 (estimate): their middles lie at 0.325, 0.75 and 0.925.
  test('count as reached from their middle on: a snail that gets to 0.9 of the rock leaves what is hidden', () => {
    expect(reached('Trochus histrio', plate)).toEqual([true, true, false])
  })

  test('of the sand, a climbing snail that gets to a fifth of it reaches the open part alone', () => {
    expect(reached('Trochus histrio', { ...plate, kind: 'sand' })).toEqual([true, false, false])
  })
})

describe('a surface behind a comb', () => {
  const comb: Surface = { ...plate, enclosed: true, opening_mm: 10 }

  test('lets in whose half size passes the slot', () => {
    expect(passes(comb, 2)).toBe(true)
    expect(passes(comb, 2.1)).toBe(false)
  })

  test('is shut where no slot is told', () => {
    expect(passes({ ...plate, enclosed: true }, 0.1)).toBe(false)
  })
})
