import { describe, expect, test } from 'vitest'
import type { MechanicalFilter, System } from '../system.ts'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

const fed = (filter: Omit<MechanicalFilter, 'kind'>): System => ({
  ...box,
  vessels: [{ id: 'display', kind: 'display', volume_L: 300 }],
  feeds: [{ kind: 'dry pellet', g_per_day: 3, N_mass_fraction: 0.07, P_mass_fraction: 0.012 }],
  animals: [{ kind: 'mixed reef fish', count: 6, mass_g: 10, role: 'fish' }],
  equipment: [{ kind: 'filter floss', ...filter }],
})
const exported = (filter: Omit<MechanicalFilter, 'kind'>, atom = 'N'): number =>
  moved(run({ system: fed(filter), days: 84.5 }).ledger, { atom, to: 'outside.filter-waste' })

describe('a filter pad', () => {
  test('takes the less out the longer it waits for its change', () => {
    expect(exported({ changed_every_days: 3 })).toBeGreaterThan(exported({ changed_every_days: 7 }))
    expect(exported({ changed_every_days: 7 })).toBeGreaterThan(exported({ changed_every_days: 28 }))
  })

  test('that is never changed takes nothing out', () => {
    expect(exported({})).toBe(0)
  })

  test('catches the more the finer its mesh', () => {
    expect(exported({ changed_every_days: 3, mesh_um: 50 })).toBeGreaterThan(
      exported({ changed_every_days: 3, mesh_um: 300 }),
    )
  })

  // What is still there after τ days of a steady catch is (1 - exp(-kτ))/(kτ) of it: at 0.12 per day 84 % for
  // three days and 68 % for seven (arithmetic).
  test.each([
    [3, 0.84],
    [7, 0.68],
  ])('changed every %i days still holds %f of the nitrogen it caught', (every, share) => {
    const { ledger } = run({
      system: fed({ changed_every_days: every }),
      days: 84.5,
      marks: [42.5, 84.5],
    })
    const caught = moved(ledger, { process: 'mechanical-filtration', atom: 'N' })
    const out = moved(ledger, { atom: 'N', to: 'outside.filter-waste' })
    expect(out / caught).toBeGreaterThan(share - 0.05)
    expect(out / caught).toBeLessThan(share + 0.05)
  })

  test('from which phosphorus leaves ahead of nitrogen', () => {
    const { ledger } = run({ system: fed({ changed_every_days: 7 }), days: 84.5 })
    const kept = (atom: string): number =>
      moved(ledger, { atom, to: 'outside.filter-waste' }) /
      moved(ledger, { process: 'mechanical-filtration', atom })
    expect(kept('P')).toBeLessThan(kept('N'))
  })
})

test('siphoning takes settled waste out, six tenths of it where all of the floor is siphoned', () => {
  const { ledger, course } = run({
    system: fed({}),
    days: 30,
    events: [{ day: 29, kind: 'siphoning' }],
    samples: [29, 30],
  })
  const lay = course('bed.fast/N')[0] + course('bed.slow/N')[0]
  // The typical share of a careful siphoning (estimate of the catalogue).
  expect(moved(ledger, { atom: 'N', to: 'outside.siphoned' }) / lay).toBeCloseTo(0.6, 6)
})
