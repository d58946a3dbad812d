import { expect, test } from 'vitest'
import { nitrate } from './conformance/nitrate.ts'
import type { JournalLine } from './entries/journal.ts'
import { type JournalQuestion, journalPage } from './journal-page.ts'

/** Readings of the first days of January, the latest first. */
const journal: readonly JournalLine[] = [5, 4, 3, 2, 1].map((day) => {
  const { body, ...reading } = nitrate(day, { at: `2026-01-0${day}` })
  const kit = day % 2 === 0 ? 'Drop Kit' : 'photometer'
  const entry = { ...reading, body: { ...body, kit }, knownAt: '2026-02-01T12:00:00.000Z' }
  return { entry, state: 'holds', rivals: [], says: `Nitrate ${day} mg/L NO3` }
})

const days = (question: Partial<JournalQuestion>): readonly number[] | undefined =>
  journalPage(journal, { limit: 100, ...question })?.lines.map(({ entry }) => Number(entry.at.slice(-2)))

test('days bound a page at both ends', () => {
  expect(days({})).toEqual([5, 4, 3, 2, 1])
  expect(days({ from: '2026-01-02', to: '2026-01-04' })).toEqual([4, 3, 2])
  expect(days({ kind: 'note' })).toEqual([])
  expect(days({ kind: 'reading' })).toHaveLength(5)
})

test('each word is looked for in the sentence and in all that was typed, in letters of any size', () => {
  expect(days({ words: 'NITRATE photometer' })).toEqual([5, 3, 1])
  expect(days({ words: '  drop   4 ' })).toEqual([4])
  expect(days({ words: 'drop phosphate' })).toEqual([])
})

test('pages follow one another without a gap, and the last says so', () => {
  const first = journalPage(journal, { limit: 2, words: 'photometer' })
  expect(first).toMatchObject({ next: nitrate(3).id })
  const second = journalPage(journal, { limit: 2, words: 'photometer', before: nitrate(3).id })
  expect(second?.lines.map(({ entry }) => entry.id)).toEqual([nitrate(1).id])
  expect(second).not.toHaveProperty('next')
  expect(journalPage(journal, { limit: 5 })).not.toHaveProperty('next')
  expect(journalPage(journal, { limit: 2, before: nitrate(9).id })).toBeUndefined()
})
