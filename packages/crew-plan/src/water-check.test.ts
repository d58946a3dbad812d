import { ordinaryReef } from '@holdfast/ecosystem/testing/ordinary-reef'
import { describe, expect, test } from 'vitest'
import { presentOf } from './testing/present-of.ts'
import { trialRun } from './trial-run.ts'
import { waterForbids, waterIssue } from './water-check.ts'

const reef = ordinaryReef(3)
const opening = { nitrate_mg_L: 8, phosphate_mg_L: 0.06 }

describe('before an animal comes', () => {
  test('water with 1 mg/L of ammonia forbids it, water that reads nothing does not', () => {
    expect(waterForbids(presentOf(reef, { ...opening, ammonia_mg_N_L: 1 }))).toMatchObject({
      code: 'cycle unfinished',
    })
    expect(waterForbids(presentOf(reef, opening))).toBeUndefined()
  })

  test('ammonia that was read forbids it where the model expects none', () => {
    const present = presentOf(reef, opening)
    expect(waterForbids({ ...present, read: { ammonia: 0.6 } })).toMatchObject({ code: 'cycle unfinished' })
    expect(waterForbids({ ...present, read: { nitrite: 2 } })).toMatchObject({ code: 'cycle unfinished' })
    expect(waterForbids({ ...present, read: { ammonia: 0.02, nitrite: 0.01 } })).toBeUndefined()
  })

  test('one draw in five that keeps nitrite forbids nothing in an old tank, and does in a young one', () => {
    const [clean, kept] = [0, 5].map(
      (nitrite_mg_L) => presentOf(reef, { ...opening, nitrite_mg_L }).worlds[0].states,
    )
    const { model } = presentOf(reef, opening)
    const worlds = [clean, clean, kept, clean, clean]
    expect(waterIssue(model, worlds, 'Water')).toBeUndefined()
    const surfaces = model.system.surfaces.map((surface) => ({ ...surface, age_days: 20 }))
    const young = { ...model, system: { ...model.system, surfaces } }
    expect(waterIssue(young, worlds, 'Water')).toMatchObject({ code: 'cycle unfinished' })
  })

  test('the water is looked at on the day of each step, not on the first alone', () => {
    const snails = { taxon: 'Trochus histrio', count: 2 }
    const { arrivals, model } = trialRun(presentOf(reef, { ...opening, ammonia_mg_N_L: 1 }), [
      { day: 0, ...snails },
      { day: 42, ...snails },
    ])
    expect([...arrivals.keys()]).toEqual([0, 42])
    expect(waterIssue(model, arrivals.get(0) ?? [], 'Water')).toBeDefined()
    expect(waterIssue(model, arrivals.get(42) ?? [], 'Water')).toBeUndefined()
  })
})
