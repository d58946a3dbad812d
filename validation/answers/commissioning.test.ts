import type { Commissioning } from '@holdfast/commissioning'
import { expect, test } from 'vitest'
import { ask } from '../ask.ts'
import type { CaseFile, Check, Expected } from '../case-file.ts'
import { withoutModel } from '../model-answers.ts'

const file: CaseFile = {
  id: 'new',
  title: 'new',
  start: '2026-03-01',
  asof: '2026-03-31',
  system: {
    vessels: [{ id: 'display', kind: 'display', volume_L: 200 }],
    flow: [],
    surfaces: [],
    rock: [{ kind: 'dried ex-ocean', mass_kg: 20, age_days: 0 }],
    source_water: { kind: 'RO/DI', NO3_mg_L: 0, PO4_mg_L: 0 },
    salt_mix: { salinity_psu: 35, NO3_mg_L: 0, PO4_mg_L: 0 },
    salinity_psu: 35,
    temperature_C: 25,
    evaporation_L_per_day: 4,
    feeds: [],
    equipment: [],
    animals: [],
  },
  log: { readings: [], events: [] },
  expert: [],
}

const on = (day: number) => ({ low: day, middle: day, high: day })

const told: Commissioning = {
  from: 100,
  asOf: 130,
  until: 495,
  courses: [],
  peaks: [
    { quantity: 'ammonia', unit: 'mg/L N', day: on(105), height: on(2), by: 'readings' },
    { quantity: 'nitrite', unit: 'mg/L NO2', day: on(120), height: on(5), by: 'readings' },
    { quantity: 'nitrate', unit: 'mg/L NO3', day: on(160), height: on(30), by: 'model' },
  ],
  conditions: [
    { name: 'nitrite_near_nothing', state: 'open', limits: [] },
    { name: 'ammonia_challenge_cleared', state: 'open', limits: [] },
  ],
  readyNow: false,
  ready: { low: 150, middle: 170, high: Number.POSITIVE_INFINITY },
  stocked: false,
  next: [],
  not: [],
}

const result = (check: Check, expected: Expected) =>
  ask(
    file,
    { id: 'a', statement: '', check, expected, strength: 'certain' },
    { ...withoutModel, commissioning: () => told },
  ).result

test('a start-up is answered by its peaks, its conditions and its day since the start', () => {
  expect(result({ quantity: 'cycle_order' }, { equals: ['ammonia', 'nitrite', 'nitrate'] })).toBe('passed')
  expect(result({ quantity: 'cycle_order' }, { equals: ['nitrite', 'ammonia', 'nitrate'] })).toBe('failed')
  expect(result({ quantity: 'nitrite_peak_mg_L' }, { range: [4.9, 5.1] })).toBe('passed')
  expect(result({ quantity: 'ready_now' }, { equals: false })).toBe('passed')
  expect(result({ quantity: 'ready_date_days' }, { range: [70, 70] })).toBe('passed')
  expect(result({ quantity: 'ready_requires' }, { includes: ['ammonia_challenge_cleared'] })).toBe('passed')
  expect(result({ quantity: 'ready_requires' }, { excludes: ['nitrite_near_nothing'] })).toBe('failed')
})

test('where rock gives off nitrogen, the nitrate at the end is that of the model and not the sum of the doses', () => {
  expect(result({ quantity: 'nitrate_end_of_cycle_mg_L' }, { range: [29, 31] })).toBe('passed')
})

test('without a model a start-up is skipped', () => {
  const statement = {
    id: 'a',
    statement: '',
    check: { quantity: 'ready_now' },
    expected: { equals: false },
    strength: 'certain',
  } as const
  expect(ask(file, statement, withoutModel)).toEqual({ result: 'skipped', because: 'model' })
})
