import { expect, test } from 'vitest'
import type { ActivatedCarbon } from '../system.ts'
import { moved, run } from '../testing/run.ts'
import { box } from '../testing/systems.ts'

const clean = (carbon: Omit<ActivatedCarbon, 'kind'>, organics: number, days = 30) =>
  run({
    system: { ...box, equipment: [{ kind: 'activated carbon', ...carbon }] },
    days,
    start: { 'water.resistant/C': organics, 'water.resistant/N': organics / 12 },
  })

test('a gram for a litre takes most of the lasting organics within days', () => {
  const { course } = clean({ mass_g: 50 }, 2000)
  expect(course('water.resistant/C')[7] / course('water.resistant/C')[0]).toBeLessThan(0.1)
})

test('what it takes carries its nitrogen, and leaves with the carbon', () => {
  const { ledger } = clean({ mass_g: 50, replaced_every_days: 14 }, 2000)
  const taken = moved(ledger, { process: 'activated-carbon', atom: 'N' })
  expect(taken).toBeGreaterThan(100)
  expect(moved(ledger, { atom: 'N', to: 'outside.spent-media' })).toBeGreaterThan(0.9 * taken)
})

// 20 to 120 mg C on a gram, typical 50 (practice of drinking water works, from memory).
test('a gram is full with 50 mg of carbon and takes no more', () => {
  const { course } = clean({ mass_g: 1 }, 20_000, 365)
  const full = (50 * 1000) / 12.011
  expect(course('media.carbon/C')[365]).toBeLessThanOrEqual(full)
  expect(course('media.carbon/C')[365]).toBeGreaterThan(0.95 * full)
})

test('neither nitrate nor phosphate goes onto it', () => {
  const { ledger } = clean({ mass_g: 50 }, 2000)
  expect(moved(ledger, { atom: 'N', from: 'water.nitrate' })).toBe(0)
  expect(moved(ledger, { atom: 'P', from: 'water.phosphate' })).toBe(0)
})
