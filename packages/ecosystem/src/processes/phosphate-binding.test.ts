import { expect, test } from 'vitest'
import type { Equipment } from '../system.ts'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

const bound = (equipment: readonly Equipment[], days = 30) =>
  run({
    system: { ...box, equipment: [{ kind: 'phosphate binder', La_mg_per_day: 2 }, ...equipment] },
    days,
    opening: { nitrate_mg_L: 5, phosphate_mg_L: 2 },
  })

test('lanthanum binds less than one phosphate each: LaPO4 (arithmetic)', () => {
  const { ledger } = bound([])
  const lanthanum = (30 * 2 * 1000) / 138.905
  const taken = moved(ledger, { process: 'phosphate-binding', atom: 'P' })
  expect(taken / lanthanum).toBeGreaterThan(0.3)
  expect(taken / lanthanum).toBeLessThan(1)
})

test('what it binds stays in the system, through a coarse filter too', () => {
  const { ledger } = bound([{ kind: 'filter sock', changed_every_days: 3, mesh_um: 200 }])
  expect(moved(ledger, { process: 'fine-filtration', atom: 'P' })).toBe(0)
})

test('a filter of ten micrometres takes it out', () => {
  const { ledger } = bound([{ kind: 'filter sock', changed_every_days: 3, mesh_um: 10 }])
  const taken = moved(ledger, { process: 'phosphate-binding', atom: 'P' })
  expect(moved(ledger, { process: 'fine-filtration', atom: 'P' })).toBeGreaterThan(0.9 * taken)
})

test('phosphate falls towards nothing smoothly and nothing is clipped', () => {
  const { concentrations, statistics } = bound([], 400)
  const phosphate = concentrations('water.phosphate/P')
  expect(statistics.limited).toBe(0)
  expect(phosphate.filter((value, day) => day > 0 && value > phosphate[day - 1] + 1e-3)).toEqual([])
})
