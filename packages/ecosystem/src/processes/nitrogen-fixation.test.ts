import { expect, test } from 'vitest'
import type { Patch } from '../accounts/index.ts'
import type { System } from '../system.ts'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box, plate } from '../testing/systems.ts'

const mat: System = {
  ...box,
  vessels: [{ id: 'display', kind: 'display', volume_L: 100_000 }],
  surfaces: [plate],
  algae: [{ kind: 'cyano', surface: 'plate', cover: 0.9 }],
}

/** mmol N per m² of mat and day in the first days. */
function fixed(nitrate_mg_L: number, kind = 'cyano'): number {
  const { ledger, cover } = run({
    system: { ...mat, algae: [{ kind, surface: 'plate', cover: 0.9 }] },
    days: 2,
    opening: { nitrate_mg_L, phosphate_mg_L: 0.1 },
    facts: nothingUnexplained,
  })
  const covered = (patch: Patch): number => cover({ surface: 'plate', kind, patch })[1]
  const area = 0.65 * covered('open') + 0.2 * covered('half_hidden') + 0.15 * covered('hidden')
  return moved(ledger, { process: 'nitrogen-fixation', atom: 'N', from: 'outside.air' }) / 2 / area / 1000
}

// Brocke et al. 2018, Coral Reefs 37:861 (abstract read): mats of cyanobacteria fixed up to 169 mg (12 mmol) N per
// m² and day; low end 0.1 mmol set with it.
test('a mat in water without nitrogen fixes what mats of reefs fix', () => {
  expect(fixed(0)).toBeGreaterThan(0.1)
  expect(fixed(0)).toBeLessThan(12)
})

test('at readable nitrate a mat fixes next to nothing', () => {
  expect(fixed(2) / fixed(0)).toBeLessThan(0.05)
})

test('turf fixes some and hair algae none', () => {
  expect(fixed(0, 'turf')).toBeGreaterThan(0)
  expect(fixed(0, 'turf')).toBeLessThan(fixed(0))
  expect(fixed(0, 'hair_green')).toBe(0)
})
