import { expect, test } from 'vitest'

import type { Entry, Stored } from '../entries/entry.ts'
import { readEntry } from '../entries/read-entry.ts'
import { standing } from '../entries/standing.ts'
import { observationsAndEvents } from '../observations-and-events.ts'
import { entriesFromSheet, type SheetEntries } from './entries-from-sheet.ts'
import { readSheet } from './read-sheet.ts'

const header = 'Date,NO3 (mg/L),PO4 (mg/L),Notes'
const rows = ['2026-01-04,5,0.05,', '2026-01-11,5.5,<0.03,"changed 40 L, added 3 snails"']

function imported(
  lines: readonly string[],
  stored: readonly Stored[],
  batch = 'import-1',
  file = 'log.csv',
): SheetEntries {
  const sheet = readSheet(new TextEncoder().encode([header, ...lines].join('\n')), file)
  const by = { by: 'keeper', device: 'desk', madeAt: '2026-02-01T08:00:00.000Z' }
  return entriesFromSheet(
    sheet,
    { workspace: 'home', system: 'reef', timeZone: 'Europe/Berlin', batch, ...by },
    stored,
  )
}

let receipt = 0
function keep(entries: readonly Entry[]): Stored[] {
  receipt++
  return entries.map((entry) => ({
    ...entry,
    knownAt: `2026-02-01T08:00:${String(receipt).padStart(2, '0')}.000Z`,
  }))
}
const retraction = (of: 'entry' | 'batch', id: string): Entry => ({
  ...imported(rows, []).entries[0],
  id: `018f3a1e-7c00-7000-8000-${String(900 + receipt).padStart(12, '0')}`,
  kind: 'retraction',
  batch: 'undo',
  body: { of, id },
})
const nitrates = (log: readonly Stored[]): unknown[] =>
  standing(log).flatMap((entry) =>
    entry.kind === 'reading' && entry.body.quantity === 'nitrate' ? [entry.body.value] : [],
  )

test('every entry of an import is valid, of one batch, and keeps what was written', () => {
  const { entries } = imported(rows, [])
  expect(entries.map(({ kind }) => kind)).toEqual([
    'reading',
    'reading',
    'reading',
    'reading',
    'note',
    'water-change',
  ])
  for (const entry of entries)
    expect(readEntry(JSON.parse(JSON.stringify(entry)))).toEqual({ ok: true, entry })
  expect(new Set(entries.map(({ batch }) => batch))).toEqual(new Set(['import-1']))
  expect(entries[3].body).toEqual({
    quantity: 'phosphate',
    value: 0.03,
    belowDetection: true,
    text: '<0.03',
    unit: 'mg/L',
    form: 'PO4',
  })
})

test('importing twice, with rows moved and the file renamed, adds nothing', () => {
  const log = keep(imported(rows, []).entries)
  const again = imported(rows.toReversed(), log, 'import-2', 'renamed.csv')
  expect(again).toMatchObject({ entries: [], mended: [], takenBack: [] })
  expect(again.already).toHaveLength(6)
})

test('two equal readings of one day are both kept', () => {
  const { entries } = imported(['2026-01-04,5,,', '2026-01-04,5,,'], [])
  expect(new Set(entries.map(({ id }) => id)).size).toBe(2)
})

test('a mended cell is shown as was and now, and corrects what was stored', () => {
  const log = keep(imported(rows, []).entries)
  const mend = imported(['2026-01-04,50,0.05,', rows[1]], log, 'import-2')
  expect(mend.mended).toEqual([
    { cell: 'B2', date: '2026-01-04', quantity: 'nitrate', was: '5 mg/L NO3', now: '50 mg/L NO3' },
  ])
  const mended = [...log, ...keep(mend.entries)]
  expect(nitrates(mended)).toEqual([5.5, 50])
  const back = imported(rows, mended, 'import-3')
  expect(back.mended).toMatchObject([{ was: '50 mg/L NO3', now: '5 mg/L NO3' }])
  expect(nitrates([...mended, ...keep(back.entries)])).toEqual([5.5, 5])
})

test('a second reading on a day already imported is new and corrects nothing', () => {
  const log = keep(imported(rows, []).entries)
  const more = imported([...rows, '2026-01-04,6,,'], log, 'import-2')
  expect(more.entries).toMatchObject([{ body: { value: 6 } }])
  expect(more.mended).toEqual([])
})

test('one undo takes the import back, and the sheet can then be imported anew', () => {
  const log = keep(imported(rows, []).entries)
  const undone = [...log, ...keep([retraction('batch', 'import-1')])]
  expect(standing(undone)).toEqual([])
  const again = imported(rows, undone, 'import-2')
  expect(again.entries).toHaveLength(6)
  expect(nitrates([...undone, ...keep(again.entries)])).toEqual([5, 5.5])
})

test('what the keeper corrected or took back by hand is not brought back by the sheet', () => {
  const log = keep(imported(rows, []).entries)
  const [first, , second] = log
  const { batch: _, ...byHand } = first
  const corrected = { ...byHand, id: '018f3a1e-7c00-7000-8000-000000000777', replaces: first.id } as Entry
  const mended = [...log, ...keep([corrected, retraction('entry', second.id)])]
  const again = imported(rows, mended, 'import-2')
  expect(again).toMatchObject({ entries: [], mended: [], takenBack: ['B3'] })
})

test('an imported change of water reaches the model after the readings of its day', () => {
  const { observations, events } = observationsAndEvents(keep(imported(rows, []).entries), 'Europe/Berlin')
  expect(observations).toHaveLength(4)
  expect(events).toMatchObject([{ kind: 'water change', volume_L: 40 }])
  expect(events[0].day).toBeGreaterThan(observations[3].day)
})

test('the same sheet gives the same entries and the same days wherever the program runs', () => {
  const zone = process.env.TZ
  const days = ['Pacific/Auckland', 'America/Los_Angeles'].map((TZ) => {
    process.env.TZ = TZ
    expect(Intl.DateTimeFormat().resolvedOptions().timeZone).toBe(TZ)
    const { entries } = imported(['2026-03-29,5,0.05,', '2026-10-25,6,0.05,'], [])
    return [
      entries.map(({ id, at }) => [id, at]),
      observationsAndEvents(keep(entries), 'Europe/Berlin').observations,
    ]
  })
  if (zone === undefined) delete process.env.TZ
  else process.env.TZ = zone
  expect(days[0]).toEqual(days[1])
})
