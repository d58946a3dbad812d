import { expect, test } from 'vitest'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

/** Share of 1 mg/L of ammonia nitrogen that a box without nitrifiers gives to the air. */
function lost(days: number, pH?: number): number {
  const { ledger, course } = run({
    system: { ...box, ...(pH === undefined ? {} : { pH }) },
    days,
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0, ammonia_mg_N_L: 1 },
  })
  return (
    moved(ledger, { process: 'ammonia-evasion', atom: 'N', to: 'outside.air' }) / course('water.ammonia/N')[0]
  )
}

// Two films (Liss & Slater 1974, from memory): 0.17 m/d over half a metre, of the 6.6 % that are NH3 at pH 8.1.
test('a tank without nitrifiers loses some two hundredths of its ammonia a day to the air', () => {
  expect(lost(1)).toBeGreaterThan(0.01)
  expect(lost(1)).toBeLessThan(0.04)
})

test('it loses more than twice as much at pH 8.5 as at 8.1, and hardly any at 7', () => {
  expect(lost(1, 8.5) / lost(1, 8.1)).toBeGreaterThan(2)
  expect(lost(1, 7)).toBeLessThan(0.1 * lost(1, 8.1))
})

test('an untold pH is taken to be that of reefs', () => {
  expect(lost(1)).toBe(lost(1, 8.1))
})
