import { describe, expect, test } from 'vitest'
import type { Rock } from '../system.ts'
import { moved, nothingUnexplained, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

/** 300 L in the dark over 40 kg of rock: nobody feeds and nothing lives but what came with it. */
const overRock = (rock: Omit<Rock, 'mass_kg' | 'age_days'> & { age_days?: number }, days = 60) =>
  run({
    system: {
      ...box,
      vessels: [{ id: 'display', kind: 'display', volume_L: 300 }],
      rock: [{ age_days: 0, mass_kg: 40, ...rock }],
    },
    days,
    opening: { nitrate_mg_L: 0, phosphate_mg_L: 0 },
    facts: nothingUnexplained,
    marks: [0, days],
  })

describe('rock of the sea that is not cured', () => {
  const { concentrations, ledger } = overRock({ kind: 'uncured live' })

  test('makes ammonia, nitrate and phosphate though nothing is fed', () => {
    expect(Math.max(...concentrations('water.ammonia/N'))).toBeGreaterThan(10)
    expect(concentrations('water.nitrate/N')[60]).toBeGreaterThan(50)
    expect(Math.max(...concentrations('water.phosphate/P'))).toBeGreaterThan(0.5)
  })

  test('brings no more than was in it: 0.2 mg of nitrogen in a gram at the typical value', () => {
    const total = (40_000 * 0.2 * 1000) / 14.007
    const given = moved(ledger, { process: 'leaching', atom: 'N' })
    expect(given).toBeLessThan(total)
    // Curing takes four to eight weeks (common practice): most is out after sixty days.
    expect(given).toBeGreaterThan(0.9 * total)
  })
})

test('cured for two months in another vessel it gives a twentieth or less', () => {
  const given = (rock: Parameters<typeof overRock>[0]): number =>
    moved(overRock(rock).ledger, { process: 'leaching', atom: 'N' })
  expect(given({ kind: 'uncured live', cured_days: 60 })).toBeLessThan(0.05 * given({ kind: 'uncured live' }))
})

test('dried rock of the sea goes on giving phosphate after three months, and quarried rock never does', () => {
  const late = (kind: Rock['kind']): number => {
    const course = overRock({ kind }, 120).course('rock.exchangeable/P')
    return course[90] - course[120]
  }
  expect(late('dried ex-ocean')).toBeGreaterThan(0)
  const quarried = overRock({ kind: 'quarried dry' })
  expect(quarried.ledger.rows.filter(({ process }) => process === 'leaching')).toEqual([])
})

test('rock that is added brings what is dead in it on that day', () => {
  const { ledger } = run({
    system: { ...box, rock: [{ kind: 'uncured live', mass_kg: 0, age_days: 0 }] },
    days: 10,
    facts: nothingUnexplained,
    events: [{ day: 3, kind: 'rock added', rock: { kind: 'uncured live', mass_kg: 5, age_days: 0 } }],
  })
  const dead = moved(ledger, { atom: 'N', from: 'outside.rock', to: 'rock.buried' })
  expect(dead).toBeCloseTo((5000 * 0.2 * 1000) / 14.007, 3)
})
