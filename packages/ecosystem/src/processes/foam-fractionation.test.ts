import { expect, test } from 'vitest'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

const skimmed = { ...box, equipment: [{ kind: 'skimmer' as const }] }

test('a skimmer on sterile water takes neither nitrate nor phosphate in thirty days', () => {
  const { course } = run({ system: skimmed, days: 30, opening: { nitrate_mg_L: 20, phosphate_mg_L: 0.2 } })
  for (const id of ['water.nitrate/N', 'water.phosphate/P']) expect(course(id)[30]).toBe(course(id)[0])
})

test('a skimmer takes particles, and none while it is switched off', () => {
  const exported = (off: readonly (readonly [number, number])[]) =>
    moved(
      run({
        system: { ...box, equipment: [{ kind: 'skimmer', off }] },
        days: 10,
        start: { 'water.particles/C': 1000 },
      }).ledger,
      { atom: 'C', to: 'outside.skimmate' },
    )
  expect(exported([])).toBeGreaterThan(50)
  expect(exported([[0, 10]])).toBe(0)
})

// Feldman et al. 2009, 2010 (nutrient case N5, read as excerpts): foam takes 20 to 35 % of the organic
// carbon and then stops. What it leaves is the class of organics that gather at no bubble.
test('foam leaves the organics that gather at no bubble', () => {
  const { ledger } = run({ system: skimmed, days: 30, start: { 'water.resistant/C': 1000 } })
  expect(moved(ledger, { atom: 'C', from: 'water.resistant', to: 'outside.skimmate' })).toBe(0)
})
