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
