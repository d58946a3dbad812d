import { composeEntry } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import { served } from '../testing/served.ts'
import { asked } from './testing/against-document.ts'
import { lines, list, nitrate, said, send, typed } from './testing/keeper.ts'

test('the journal has the latest day first and says what became of each entry', async () => {
  const { server, logbook } = await served()
  const first = nitrate('12 mg/L NO3')
  const mended = nitrate('1.2 mg/L NO3', { replaces: first.id })
  const note = typed('note', { text: 'snails wander' }, { at: '2026-02-21' })
  const undo = composeEntry(
    {
      workspace: 'home',
      system: 'example-reef',
      kind: 'retraction',
      body: { of: 'entry', id: note.id },
      at: '2026-02-21',
      precision: 'day',
      by: 'keeper',
      device: 'test',
    },
    new Date(),
  )
  expect((await send(server, { entries: [first, mended, note, undo] })).status).toBe(200)
  const { lines: all } = await lines(server)
  expect(all.map(({ entry, state, by }) => [entry.at, entry.kind, state, by])).toEqual([
    ['2026-02-21', 'note', 'taken back', undo.id],
    ['2026-02-20', 'reading', 'holds', undefined],
    ['2026-02-20', 'reading', 'corrected', mended.id],
    ['2026-02-15', 'water-change', 'holds', undefined],
    ['2026-02-01', 'reading', 'holds', undefined],
    ['2026-02-01', 'system', 'holds', undefined],
  ])
  expect(await logbook.received()).toBe(7)
})

test('a later correction of one entry holds, and each names its rival', async () => {
  const { server } = await served()
  const first = nitrate('12 mg/L NO3')
  const [one, other] = ['1 mg/L NO3', '2 mg/L NO3'].map((value) => nitrate(value, { replaces: first.id }))
  for (const entry of [first, one, other]) await send(server, { entries: [entry] })
  const { lines: all } = await lines(server, '?from=2026-02-20')
  expect(all).toMatchObject([
    { entry: { id: other.id }, state: 'holds', rivals: [one.id] },
    { entry: { id: one.id }, state: 'corrected', rivals: [other.id] },
    { entry: { id: first.id }, state: 'corrected' },
  ])
})

test('the journal is asked by kind, days and words, and comes in pages', async () => {
  const { server } = await served()
  const notes = [3, 4, 5].map((day) => typed('note', { text: `day ${day}, calm` }, { at: `2026-03-0${day}` }))
  await send(server, { entries: notes })
  const texts = async (question: string) => (await lines(server, question)).lines.map(({ says }) => says)
  expect(await texts('?kind=note&from=2026-03-04')).toHaveLength(2)
  expect(await texts('?words=CALM%204')).toEqual([expect.stringContaining('day 4')])
  const { lines: page, next } = await lines(server, '?kind=note&limit=2')
  expect(page.map(({ entry }) => entry.id)).toEqual([notes[2].id, notes[1].id])
  expect(next).toBeDefined()
  const rest = await lines(server, `?kind=note&limit=2&before=${next}`)
  expect(rest.lines.map(({ entry }) => entry.id)).toEqual([notes[0].id])
  expect(rest.next).toBeUndefined()
})

test('what another program writes is in the next answer', async () => {
  const { server, logbook } = await served()
  expect((await lines(server)).lines).toHaveLength(3)
  await logbook.append([typed('note', { text: 'from the terminal' })])
  expect((await lines(server)).lines).toHaveLength(4)
  await logbook.append([typed('note', { text: 'of another system' }, { system: 'pond' })])
  expect((await lines(server)).lines).toHaveLength(4)
  expect((await lines(server)).lines).toHaveLength(4)
})

test('a question that is not understood is said with what would be', async () => {
  const { server } = await served()
  const slips = await list(server, '?kind=story&from=1.2.2026&limit=0')
  expect(slips.status).toBe(400)
  expect(await said(slips)).toEqual([
    expect.stringMatching(/^kind: "story" is not understood\. One kind only: reading, /),
    'from: "1.2.2026" is not understood. The first day, such as 2026-03-01. Nothing was changed.',
    'limit: "0" is not understood. How many at most, 1 to 1000. Nothing was changed.',
  ])
  const nowhere = await list(server, '?before=018f3a1e-7c00-7000-8000-0000000000ff')
  expect([nowhere.status, await said(nowhere)]).toEqual([404, [expect.stringMatching(/^Page before: /)]])
  const route = 'get /api/systems/{system}/entries'
  const pond = await asked(server, route, '/api/systems/pond/entries')
  expect([pond.status, await said(pond)]).toEqual([404, [expect.stringMatching(/^System: "pond" is not/)]])
})
