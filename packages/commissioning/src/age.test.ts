import { expect, test } from 'vitest'
import { mayBeStartingUp } from './age.ts'
import { newTank } from './testing/new-tank.ts'

const [face] = newTank().surfaces
const on = (day: number) => ({ from: 0, asOf: day })

test('a tank is in its start-up for the first months at most', () => {
  // Rock that was full of life cures for two to six months (common practice).
  expect(mayBeStartingUp(newTank(), on(30))).toBe(true)
  expect(mayBeStartingUp(newTank(), on(400))).toBe(false)
})

test('new glass about old rock is a new tank, and a log that has just begun makes no old tank new', () => {
  const rock = { ...face, age_days: 600 }
  const glass = (age_days: number) => ({ ...face, id: 'glass', kind: 'glass' as const, age_days })
  expect(mayBeStartingUp({ surfaces: [rock, glass(0)] }, on(10))).toBe(true)
  expect(mayBeStartingUp({ surfaces: [rock, glass(600)] }, on(10))).toBe(false)
})

test('of a system without surfaces nothing is said', () => {
  expect(mayBeStartingUp({ surfaces: [] }, on(10))).toBe(false)
})
