import { expect, test } from 'vitest'
import type { DenitrifyingReactor } from '../system.ts'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'
import { sulphurReactorUse } from './denitrifying-reactor.ts'

const day = (reactor: Omit<DenitrifyingReactor, 'kind'>, nitrate_mg_L: number) =>
  run({
    system: { ...box, equipment: [{ kind: 'denitrifying reactor', ...reactor }] },
    days: 1,
    opening: { nitrate_mg_L, phosphate_mg_L: 0 },
  })

// Vidal, Rocha & Galvao 2002, Chemosphere 48:445 (abstract read): columns of the sulphur kind took 20 to 40
// µmol/L a day out of systems of 50 L, organic-fed ones 9 to 11. The size of the columns was not shown; a
// litre of sulphur is taken, at nitrate that does not limit.
test('a litre of sulphur takes tens of µmol/L a day out of 50 L when water runs slowly', () => {
  const { concentrations } = day({ fed: 'sulphur', media_L: 1, flow_L_per_hour: 0.25 }, 30)
  const [before, after] = concentrations('water.nitrate/N')
  expect(before - after).toBeGreaterThan(20)
  expect(before - after).toBeLessThan(80)
})

test('no reactor takes more than what runs through it', () => {
  const { concentrations } = day({ fed: 'organic', media_L: 50, flow_L_per_hour: 0.5 }, 30)
  const [before, after] = concentrations('water.nitrate/N')
  // 12 L a day through 50 L, well mixed: at most a share of 1 - exp(-0.24).
  expect(after / before).toBeGreaterThan(Math.exp(-0.24))
})

test('carbon is given for each nitrogen where carbon feeds it, and none where sulphur does', () => {
  const organic = day({ fed: 'organic', media_L: 1 }, 30).ledger
  const gas = moved(organic, { atom: 'N', to: 'outside.air' })
  // Flows out of two accounts keep their proportion as nearly as a step is true.
  expect(moved(organic, { atom: 'C', from: 'outside.dose' }) / gas).toBeCloseTo(1.25, 2)
  expect(moved(day({ fed: 'sulphur', media_L: 1 }, 30).ledger, { atom: 'C', from: 'outside.dose' })).toBe(0)
})

// 55 S + 50 NO3 make 55 SO4 and 64 H (Batchelor & Lawrence 1978, from memory).
test('sulphur costs 1.28 of alkalinity and makes 1.1 of sulphate for each nitrogen', () => {
  expect(sulphurReactorUse(1000)).toEqual({ alkalinity_umol: 1280, sulphate_umol: 1100 })
})
