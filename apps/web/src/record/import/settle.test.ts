import { type Answers, readSheet, type Sheet } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import { SheetReader, settle } from './settle.ts'

const bytes = new TextEncoder().encode('Date,Nitrate,Temp F\n1/2/25,11,79\n2/3/25,12,80\n')

/** A reader that counts how often the sheet was read. */
function counting() {
  const reads: Answers[] = []
  const read = (answers: Answers): Sheet => {
    reads.push(answers)
    return readSheet(bytes, 'log.csv', answers)
  }
  return { reader: new SheetReader(read), reads }
}

const states = ({ questions }: ReturnType<typeof settle>) =>
  questions.map(({ id, answer, waiting }) => [id, answer, waiting])

test('what is answered stays among the questions with its answer, in its place', () => {
  const { reader } = counting()
  const open = settle(reader, {})
  expect(states(open)).toEqual([
    ['date-order:A', undefined, 2],
    ['unit:B', undefined, 2],
    ['nitrate-form:B', undefined, 2],
  ])
  const settled = settle(reader, { 'unit:B': 'mg/L', 'date-order:A': 'day first' })
  expect(states(settled)).toEqual([
    ['date-order:A', 'day first', 0],
    ['unit:B', 'mg/L', 0],
    ['nitrate-form:B', undefined, 2],
  ])
  expect(settled.sheet.readings.map(({ date }) => date)).toEqual(['2025-02-01', '2025-03-02'])
})

test('an answer to nothing that is asked, or that is no option, is not taken', () => {
  const { reader } = counting()
  const stray = settle(reader, { 'unit:Z': 'mg/L', 'nitrate-form:B': 'NO9' })
  expect(stray.answers).toEqual({})
  expect(states(stray)).toEqual(states(settle(reader, {})))
})

test('one more answer costs one more reading, and the same answers none', () => {
  const { reader, reads } = counting()
  settle(reader, {})
  settle(reader, { 'date-order:A': 'day first' })
  settle(reader, { 'date-order:A': 'day first' })
  expect(reads).toEqual([{}, { 'date-order:A': 'day first' }])
})
