import { observationsAndEvents, readSheet, readSystemFile } from '@holdfast/logbook'
import { describe, expect, test } from 'vitest'
import { entriesIn, received } from './making/entries.ts'
import { filesOf } from './making/files.ts'
import { kept } from './making/kept.ts'
import { stories } from './stories.ts'

describe.each(Object.entries(stories))('%s', (name, story) => {
  const files = kept(name)
  const entries = received(entriesIn(files['log.json']))

  test('the files kept are what the story gives: run `npm run make-examples` after a change', () => {
    for (const [file, text] of Object.entries(filesOf(story)))
      expect(text === files[file as keyof typeof files], file).toBe(true)
  })

  test('the system file is read without an issue, and the log holds the same system', () => {
    const read = readSystemFile(files['system.json'])
    if (!read.ok) throw new Error(JSON.stringify(read.issues))
    expect(read.system.id).toBe(name)
    expect(entries.find((entry) => entry.kind === 'system')?.body.system).toEqual(read.system)
  })

  test('all of the log but its words reaches the model, and no entry is there twice', () => {
    const { observations, events, notUsed } = observationsAndEvents(entries, story.document.timeZone)
    expect(notUsed).toEqual([])
    expect(observations.length).toBeGreaterThan(60)
    expect(events.length).toBeGreaterThan(story.deeds.filter(({ kind }) => kind !== 'note').length - 1)
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length)
  })

  test('the spreadsheet has nothing that waits, a gap, one slip of the point and one row typed twice', () => {
    const sheet = readSheet(new TextEncoder().encode(files['tests.csv']), 'tests.csv')
    expect(sheet.issues).toEqual([])
    expect(sheet.questions.filter(({ waiting }) => waiting > 0)).toEqual([])
    const phosphate = sheet.readings.filter(({ quantity }) => quantity === 'phosphate')
    const slip = phosphate.findIndex(({ date }) => date === story.tests.slip)
    expect(phosphate[slip]?.value ?? 0).toBeGreaterThan(4 * (phosphate[slip - 1]?.value ?? 1))
    // Where fresh media let phosphate swing tenfold, a slip is no stranger among its neighbours.
    const doubted = name === 'refugium-1500' ? [] : [story.tests.slip]
    expect(phosphate.filter(({ suspect }) => suspect).map(({ date }) => date)).toEqual(doubted)
    expect(phosphate.filter(({ date }) => date === story.tests.twice)).toHaveLength(2)
    const { from, to } = story.tests.noReagent
    expect(phosphate.filter(({ date }) => date >= from && date <= to)).toEqual([])
    expect(story.tests.dates.filter((date) => date >= from && date <= to).length).toBeGreaterThan(1)
  })
})
