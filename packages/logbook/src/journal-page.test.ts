import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, onTestFinished, test } from 'vitest'
import { nitrate } from './conformance/nitrate.ts'
import type { Entry } from './entries/entry.ts'
import { type JournalQuestion, journalPage } from './journal-page.ts'
import { JournalSearch } from './journal-search.ts'
import type { Logbook } from './logbook.ts'
import { openLogbook } from './sqlite/index.ts'

/** A log with a reading on each of the first five days of January, by two kits in turn. */
async function withReadings(): Promise<Logbook> {
  const folder = mkdtempSync(join(tmpdir(), 'journal-'))
  const opened = openLogbook({ folder })
  if (!opened.ok) throw new Error('not opened')
  onTestFinished(async () => {
    await opened.logbook.close()
    rmSync(folder, { recursive: true, force: true })
  })
  await opened.logbook.append([1, 2, 3, 4, 5].map(reading))
  return opened.logbook
}

function reading(day: number): Entry {
  const { body, ...rest } = nitrate(day, { at: `2026-01-0${day}` })
  return { ...rest, body: { ...body, kit: day % 2 === 0 ? 'Drop Kit' : 'photometer' } }
}

async function days(log: Logbook, question: Partial<JournalQuestion>, search = new JournalSearch(log)) {
  const { lines } = await journalPage(log, { system: 'reef', limit: 100, ...question }, search)
  return lines.map(({ entry }) => Number(entry.at.slice(-2)))
}

test.each([undefined, 'nitrate'])('days and kinds bound a page, with the words %s', async (words) => {
  const log = await withReadings()
  const all = words === undefined ? {} : { words }
  expect(await days(log, all)).toEqual([5, 4, 3, 2, 1])
  expect(await days(log, { ...all, from: '2026-01-02', to: '2026-01-04' })).toEqual([4, 3, 2])
  expect(await days(log, { ...all, kind: 'note' })).toEqual([])
  expect(await days(log, { ...all, kind: 'reading' })).toHaveLength(5)
  expect(await days(log, { ...all, system: 'pond' })).toEqual([])
})

test('each word is looked for in the sentence and in all that was typed, in letters of any size', async () => {
  const log = await withReadings()
  expect(await days(log, { words: 'NITRATE photometer' })).toEqual([5, 3, 1])
  expect(await days(log, { words: '  drop   4 ' })).toEqual([4])
  expect(await days(log, { words: 'drop phosphate' })).toEqual([])
})

test.each([undefined, 'nitrate'])(
  'pages follow one another without a gap, with the words %s',
  async (words) => {
    const log = await withReadings()
    const search = new JournalSearch(log)
    const seen: number[] = []
    let next: string | undefined
    let pages = 0
    do {
      const question = { system: 'reef', limit: 2, ...(words && { words }), ...(next && { before: next }) }
      const page = await journalPage(log, question, search)
      seen.push(...page.lines.map(({ entry }) => Number(entry.at.slice(-2))))
      next = page.next
      pages++
    } while (next !== undefined)
    expect([seen, pages]).toEqual([[5, 4, 3, 2, 1], 3])
    const lost = journalPage(log, { system: 'reef', limit: 2, before: 'x', ...(words && { words }) }, search)
    await expect(lost).rejects.toMatchObject({ issues: [{ code: 'not-a-page' }] })
  },
)

test('a search finds what came since the one before, at its place', async () => {
  const log = await withReadings()
  const search = new JournalSearch(log)
  expect(await days(log, { words: 'drop' }, search)).toEqual([4, 2])
  const late = { ...reading(2), id: nitrate(12).id, body: { ...nitrate(12).body, kit: 'drop kit, again' } }
  await log.append([reading(6), late])
  expect(await days(log, { words: 'drop' }, search)).toEqual([6, 4, 2, 2])
  const { lines } = await journalPage(log, { system: 'reef', limit: 9, words: 'drop' }, search)
  expect(lines.map(({ entry }) => entry.id).slice(2)).toEqual([late.id, reading(2).id])
})

test('a search finds what is called by a name on the page, and by its key', async () => {
  const log = await withReadings()
  const search = new JournalSearch(log, (says) => says.replace('Nitrate', 'the nitrogen salt'))
  expect(await days(log, { words: 'nitrogen salt' }, search)).toEqual([5, 4, 3, 2, 1])
  expect(await days(log, { words: 'nitrate' }, search)).toEqual([5, 4, 3, 2, 1])
  expect(await days(log, { words: 'nitrogen salt' })).toEqual([])
})

test('a search reads no further back than it must, and misses nothing that comes meanwhile', async () => {
  const log = await withReadings()
  const dayOf = (number: number) => new Date(Date.UTC(2020, 0, number)).toISOString().slice(0, 10)
  const readings = Array.from({ length: 4500 }, (_, i) => nitrate(100 + i, { at: dayOf(i) }))
  await log.append(readings.map((one, i) => (i === 3 ? { ...one, batch: 'rare' } : one)))
  let pages = 0
  const counted: Logbook = {
    ...log,
    newest(...question) {
      pages++
      return log.newest(...question)
    },
  }
  const search = new JournalSearch(counted)
  const find = async (words: string) => (await search.find({ system: 'reef' }, words, 10)).ids
  expect(await find('nitrate')).toHaveLength(10)
  expect(pages).toBe(1)
  await log.append([nitrate(5000, { at: dayOf(1), batch: 'rare' }), nitrate(5001, { batch: 'rare' })])
  const [first, last, second] = [nitrate(5001).id, readings[3]?.id, nitrate(5000).id]
  expect(await Promise.all([find('rare'), find('rare')])).toEqual([
    [first, last, second],
    [first, last, second],
  ])
  expect(pages).toBe(3)
})
