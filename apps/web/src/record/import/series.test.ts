import { readSheet } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import { seriesOf } from './series.ts'
import { SheetReader, settle } from './settle.ts'

const seriesIn = (text: string, answers = {}) => {
  const reader = new SheetReader((given) => readSheet(new TextEncoder().encode(text), 'log.csv', given))
  const { sheet, questions } = settle(reader, answers)
  return seriesOf(sheet, questions)
}

test('readings of one quantity in one unit are a series, with the cells beside what is stored', () => {
  const [phosphate, alkalinity] = seriesIn(
    'Date,PO4 (ppb),dKH\n2026-03-01,63,8\n2026-03-08,<20,\n2026-03-15,40,8.2\n',
  )
  expect(phosphate).toMatchObject({
    quantity: 'phosphate',
    unit: 'ppb',
    form: 'PO4',
    from: ['column B, “PO4 (ppb)”'],
    count: 3,
    first: '2026-03-01',
    last: '2026-03-15',
  })
  expect(phosphate?.sample.map(({ cell, text, stored }) => [cell, text, stored])).toEqual([
    ['B2', '63', '0.063 mg/L PO4'],
    ['B3', '<20', 'under 0.02 mg/L PO4'],
    ['B4', '40', '0.04 mg/L PO4'],
  ])
  expect(alkalinity).toMatchObject({ quantity: 'alkalinity', count: 2 })
})

test('a column that waits for an answer is shown with what waits', () => {
  const waiting = seriesIn('Date,Nitrate,Temp F\n2026-03-01,11,79\n2026-03-08,12,80\n')
  expect(waiting.map(({ quantity, count, waiting }) => [quantity, count, waiting])).toEqual([
    ['temperature', 2, 0],
    ['nitrate', 0, 2],
  ])
})

test('a column whose days are not known yet says so', () => {
  const [temperature] = seriesIn('Date,Temp F\n1/2/25,79\n2/3/25,80\n')
  expect(temperature).toMatchObject({ quantity: 'temperature', count: 0, waiting: 0, waitsForDays: true })
})

test('where dates run across, a series is a row', () => {
  const [nitrate] = seriesIn(',2026-03-01,2026-03-08,2026-03-15\nNO3 (mg/L),5,6,7\nCa (mg/L),420,430,440\n')
  expect(nitrate).toMatchObject({ quantity: 'nitrate', count: 3, from: ['row 2, “NO3 (mg/L)”'] })
})
