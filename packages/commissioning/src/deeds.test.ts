import { expect, test } from 'vitest'
import type { Condition, Deed } from './answer.ts'
import { deedsOf } from './deeds.ts'
import { saltFor } from './log.ts'

const limit = (value: number) => [{ value, unit: '', fact: '' }]
const seen = (
  name: Condition['name'],
  state: Condition['state'],
  value: number,
  most: number,
): Condition => ({ name, state, limits: limit(most), shown: { value, unit: '', day: 20, by: 'reading' } })

const portions = { rise: 1, mass_g: saltFor(1, 200), change: 0.5, media_g: 100 }
const quiet = [
  seen('ammonia_reads_nothing', 'met', 0, 0.05),
  seen('nitrite_near_nothing', 'met', 0, 0.2),
  seen('nitrate_under_limit', 'met', 5, 15),
  seen('phosphate_under_limit', 'met', 0.05, 0.12),
]
const unproved: Condition = { name: 'ammonia_challenge_cleared', state: 'open', limits: limit(0.5) }
const leaching: Condition = { name: 'rock_cured', state: 'open', limits: [] }

const deeds = (conditions: readonly Condition[], stocked = false) =>
  deedsOf({ conditions, stocked, hasCorals: false, readyNow: false }, portions)
const names = ({ next }: { readonly next: readonly Deed[] }) => next.map(({ name }) => name)

test('what nobody has read is tested first, and nothing else is done on the strength of a guess', () => {
  const guessed = (name: Condition['name']): Condition => ({
    name,
    state: 'met',
    limits: limit(15),
    shown: { value: 2, unit: '', day: 20, by: 'model' },
  })
  const { next } = deeds([
    { name: 'ammonia_reads_nothing', state: 'not read', limits: limit(0.05) },
    { name: 'nitrite_near_nothing', state: 'not read', limits: limit(0.2) },
    unproved,
    guessed('nitrate_under_limit'),
    guessed('phosphate_under_limit'),
  ])
  expect(next).toEqual([{ name: 'test', quantities: ['ammonia', 'nitrite', 'nitrate', 'phosphate'] }])
})

test('while ammonia can be read one tests and waits, and doses none', () => {
  const still = [seen('ammonia_reads_nothing', 'open', 1, 0.05), ...quiet.slice(1), unproved]
  expect(deeds(still).next).toEqual([{ name: 'test often', quantities: ['ammonia'] }])
})

test('once ammonia is gone a dose tries the bacteria, but over rock that leaches only when it is cured', () => {
  // 1 mg/L N in 200 L is 200 mg N; of ammonium chloride, 14.007 parts of nitrogen in 53.49: 0.764 g.
  const dose = deeds([...quiet, unproved]).next.find(({ name }) => name === 'dose')
  expect(dose?.name === 'dose' && dose.mass_g).toBeCloseTo(0.764, 3)
  expect(names(deeds([...quiet, unproved, leaching]))).toEqual(['cure'])
})

test('what the start-up has left is changed out once nothing else is open', () => {
  const left = [...quiet.slice(0, 2), seen('nitrate_under_limit', 'open', 60, 15), ...quiet.slice(3)]
  expect(names(deeds(left))).toEqual(['change'])
  expect(names(deeds([...left, unproved]))).toEqual(['dose'])
})

test('over animals no ammonia is dosed, and while it can be read they are spared first', () => {
  const still = [seen('ammonia_reads_nothing', 'open', 0.5, 0.05), ...quiet.slice(1)]
  const { next, not } = deeds(still, true)
  expect(next[0]).toEqual({ name: 'spare animals' })
  expect(not).toContain('dose over animals')
  expect(not).not.toContain('animals')
})

test('where animals or corals live nobody is told to put out the light, nor to starve them for want of a reading', () => {
  const unread: Condition = { name: 'ammonia_reads_nothing', state: 'not read', limits: limit(0.05) }
  const { next, not } = deeds([unread, ...quiet.slice(1)], true)
  expect(next).toEqual([{ name: 'test', quantities: ['ammonia'] }])
  expect(not).not.toContain('light')
  const withCorals = { conditions: quiet, stocked: false, hasCorals: true, readyNow: false }
  expect(deedsOf(withCorals, portions).not).toEqual(['animals'])
  expect(deeds(quiet).not).toContain('light')
})

test('acid and bleach are warned of where there is rock to cure', () => {
  expect(deeds([...quiet, leaching]).not).toContain('acid or bleach')
  expect(deeds(quiet).not).not.toContain('acid or bleach')
})
