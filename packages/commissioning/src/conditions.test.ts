import { catalogueAlone } from '@holdfast/facts'
import { describe, expect, test } from 'vitest'
import { conditionsOn } from './conditions.ts'
import { limitsOf } from './limits.ts'
import { asked, dose, newTank, read } from './testing/new-tank.ts'

const facts = catalogueAlone
const limits = limitsOf(facts, undefined)
const states = (question: ReturnType<typeof asked>) =>
  new Map(conditionsOn(question, limits, facts, question.asOf).map(({ name, state }) => [name, state]))

const clean = [
  read(40, 'ammonia', 0),
  read(44, 'ammonia', 0),
  read(48, 'ammonia', 0),
  read(48, 'nitrite', 0),
  read(48, 'nitrate', 8),
  read(48, 'phosphate', 0.04),
]

describe('a second dose of ammonia', () => {
  test('that is gone in two days shows what the bacteria can do', () => {
    const shown = states(asked(49, clean, [dose(0), dose(46)]))
    expect([...shown.values()]).toEqual(Array.from(shown, () => 'met'))
    expect(shown.get('ammonia_challenge_cleared')).toBe('met')
  })

  test('that is still there after two days shows too little', () => {
    const slow = [...clean.slice(0, 2), read(48, 'ammonia', 0.5), ...clean.slice(3)]
    expect(states(asked(49, slow, [dose(0), dose(46)])).get('ammonia_challenge_cleared')).toBe('open')
  })

  test('that is too small shows too little', () => {
    expect(states(asked(49, clean, [dose(0), dose(46, 0.1)])).get('ammonia_challenge_cleared')).toBe('open')
  })

  test('is asked over dry rock and not over animals or rock with life that was never dosed', () => {
    const has = (question: ReturnType<typeof asked>) => states(question).has('ammonia_challenge_cleared')
    const live = newTank([{ kind: 'uncured live', mass_kg: 20, age_days: 0 }])
    const stocked = { ...newTank(), animals: [{ kind: 'damselfish', count: 1, role: 'fish' as const }] }
    expect(has(asked(49, clean, []))).toBe(true)
    expect(has(asked(49, clean, [dose(0)], live))).toBe(true)
    expect(has(asked(49, clean, [], live))).toBe(false)
    expect(has(asked(49, clean, [dose(0)], stocked))).toBe(false)
  })

  test('leaves the quiet days before it as they were', () => {
    const between = [...clean, read(46.1, 'ammonia', 2)]
    expect(states(asked(49, between, [dose(0), dose(46)])).get('ammonia_reads_nothing')).toBe('met')
    expect(states(asked(49, between, [dose(0)])).get('ammonia_reads_nothing')).toBe('open')
  })
})

test('ammonia that has read nothing for three days only is not gone yet', () => {
  const late = [read(40, 'ammonia', 0.3), read(46, 'ammonia', 0), read(49, 'ammonia', 0)]
  expect(states(asked(49, late, [dose(0)])).get('ammonia_reads_nothing')).toBe('open')
})

test('what was read three weeks ago is not read', () => {
  const shown = states(asked(70, clean, [dose(0)]))
  expect(shown.get('ammonia_reads_nothing')).toBe('not read')
  expect(shown.get('nitrite_near_nothing')).toBe('not read')
})

test('nitrite of 5 mg/L, nitrate and phosphate beyond the band of the corals are too much', () => {
  const much = [read(48, 'nitrite', 5), read(48, 'nitrate', 26), read(48, 'phosphate', 1.3)]
  const shown = states(asked(49, much, [dose(0)]))
  for (const name of ['nitrite_near_nothing', 'nitrate_under_limit', 'phosphate_under_limit'] as const)
    expect(shown.get(name)).toBe('open')
})

test('the same ammonia is poison at pH 8.6 and none at pH 7.8', () => {
  // Un-ionised share of total ammonia in sea water of 25 °C: 2.8 % at pH 7.7 and 19 % at pH 8.6, total scale
  // (Clegg & Whitfield 1995 put it at 5.56 % at pH 8.0, as the documentation of the R package wq prints it).
  const shown = (pH: number) =>
    states(asked(49, [read(48, 'ammonia', 0.15)], [], { ...newTank(), pH })).get('un_ionised_ammonia_low')
  expect(shown(8.6)).toBe('open')
  expect(shown(7.8)).toBe('met')
})
