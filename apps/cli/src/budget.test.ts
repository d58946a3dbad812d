import type { BandedLedger } from '@holdfast/inference'
import { expect, test } from 'vitest'
import { budget } from './budget.ts'

const row = { process: 'p', instance: '', atom: 'N' } as const
const ledger: BandedLedger = {
  from: 0,
  to: 10,
  rows: [
    {
      ...row,
      from: 'outside.feed',
      to: 'water.particles',
      amount_umol: 1000,
      low_umol: 900,
      high_umol: 1200,
      members: [900, 1000, 1200],
    },
    {
      ...row,
      from: 'water.nitrate',
      to: 'outside.unexplained',
      amount_umol: 400,
      low_umol: 100,
      high_umol: 800,
      members: [100, 400, 800],
    },
    {
      ...row,
      from: 'water.nitrate',
      to: 'outside.discarded-water',
      amount_umol: 100,
      low_umol: 90,
      high_umol: 110,
      members: [90, 100, 110],
    },
    {
      ...row,
      from: 'water.labile',
      to: 'outside.discarded-water',
      amount_umol: 20,
      low_umol: 10,
      high_umol: 30,
      members: [10, 20, 30],
    },
  ],
  balances: [
    {
      account: 'water.nitrate',
      atom: 'N',
      start_umol: 50,
      end_umol: 530,
      change_low_umol: 400,
      change_high_umol: 500,
      changes: [400, 480, 500],
    },
  ],
  notModelled: [],
  weights: [0.2, 0.6, 0.2],
}

test('amounts of a span become mg a day, each with its share of what came in', () => {
  const { inputs, exports, stored } = budget(ledger, 'N')
  // 1000 µmol in 10 days at 14.007 g/mol.
  expect(inputs).toMatchObject([{ name: 'feed', mg_per_day: 1.4007, share_of_inputs: 1 }])
  expect(exports.map(({ name, share_of_inputs }) => [name, share_of_inputs])).toEqual([
    ['not_explained_yet', 0.4],
    ['water_change', 0.12],
  ])
  expect(stored.share_of_inputs).toBeCloseTo(0.48, 12)
})

test('what goes together in a member is added in it before the ends of an interval are taken', () => {
  const [, changes] = budget(ledger, 'N').exports
  expect(changes.mg_per_day_low / 1.4007).toBeCloseTo(0.1, 12)
  expect(changes.mg_per_day_high / 1.4007).toBeCloseTo(0.14, 12)
  // Were the larger of one row always with the smaller of the other, the stream would hardly vary.
  const crossed = ledger.rows.map((row, i) => (i === 3 ? { ...row, members: [30, 20, 10] } : row))
  const [, steady] = budget({ ...ledger, rows: crossed }, 'N').exports
  expect(steady.mg_per_day_low / 1.4007).toBeCloseTo(0.12, 12)
  expect(steady.mg_per_day_high / 1.4007).toBeCloseTo(0.12, 12)
})

test('where nothing came in, nothing has a share of it', () => {
  const { inputs, inputs_total } = budget({ ...ledger, rows: [] }, 'N')
  expect(inputs).toEqual([])
  expect(inputs_total).toMatchObject({ mg_per_day: 0, share_of_inputs: null })
})
