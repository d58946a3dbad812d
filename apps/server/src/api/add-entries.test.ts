import { expect, test } from 'vitest'
import { served } from '../testing/served.ts'
import { asked } from './testing/against-document.ts'
import { json, lines, nitrate, said, send } from './testing/keeper.ts'

test('what is sent is in the journal, and sent twice it is stored once', async () => {
  const { server } = await served()
  const entry = nitrate('12 mg/L NO3')
  expect(await (await send(server, { entries: [entry] })).json()).toEqual({
    added: [entry.id],
    already: [],
    differing: [],
  })
  const [first] = (await lines(server)).lines
  expect(first).toMatchObject({ entry: { id: entry.id }, state: 'holds', rivals: [] })
  expect(first.says).toContain('12 mg/L')
  const again = [entry, { ...entry, body: { ...entry.body, value: 13 } }]
  expect(await (await send(server, { entries: again })).json()).toEqual({
    added: [],
    already: [entry.id, entry.id],
    differing: [entry.id],
  })
  expect((await lines(server)).lines).toHaveLength(4)
})

test('every issue of every entry is said at once, and nothing of the sending is stored', async () => {
  const { server } = await served()
  const good = nitrate('12 mg/L NO3')
  const bad = { ...nitrate('13 mg/L NO3'), at: '20 February', body: {} }
  const elsewhere = nitrate('14 mg/L NO3', { system: 'pond', workspace: 'club' })
  const refused = await send(server, { entries: [good, bad, elsewhere, 5] })
  expect(refused.status).toBe(422)
  const words = await said(refused)
  expect(words).toEqual([
    expect.stringMatching(/^Entry 2: at: "20 February" does not fit\./),
    'Entry 3: workspace: "club" is not that of this log. "home". Nothing was stored.',
    'Entry 3: system: "pond" is not in this log. example-reef. Nothing was stored.',
    expect.stringMatching(/^Entry 4: 5 does not fit\./),
  ])
  expect((await lines(server)).lines).toHaveLength(3)
  for (const none of [{}, [], { entries: 5 }, null])
    expect(await said(await send(server, none))).toEqual([expect.stringMatching(/^entries: it is no list\./)])
})

test('a description may come with the first entries of its system', async () => {
  const { server, logbook } = await served()
  const [described] = await logbook.read({ kinds: ['system'] })
  const { knownAt, ...description } = described
  const id = '018f3a1e-7c00-7000-8000-00000000abcd'
  const pond = { ...description, id, system: 'pond' }
  const answer = await send(server, { entries: [nitrate('3 mg/L NO3', { system: 'pond' }), pond] })
  expect(answer.status).toBe(200)
  expect(knownAt).toBeDefined()
})

test('fields that this version does not know are kept as they were sent', async () => {
  const { server, logbook } = await served()
  const entry = nitrate('12 mg/L NO3')
  const sent = { ...entry, mood: 'calm', body: { ...entry.body, glass: 'blue' } }
  await send(server, { entries: [sent] })
  const [stored] = await logbook.asSent({ ids: [entry.id] })
  expect(stored).toEqual({ ...sent, knownAt: expect.any(String) })
  expect((await lines(server)).lines[0].entry).toMatchObject({ mood: 'calm', body: { glass: 'blue' } })
})

test('only JSON is taken, and only of a bearable size', async () => {
  const { server } = await served()
  for (const type of ['text/plain', 'application/x-www-form-urlencoded', '']) {
    const refused = await send(server, { entries: [] }, { 'content-type': type })
    expect(refused.status).toBe(415)
  }
  const cut = await asked(server, 'post /api/entries', '/api/entries', {
    headers: json,
    body: '{"entries":[',
  })
  expect([cut.status, await said(cut)]).toEqual([400, [expect.stringMatching(/^Request: it is no JSON\./)]])
  const long = 'x'.repeat(8 * 1024 * 1024)
  const large = await send(server, { entries: [long] })
  expect([large.status, await said(large)]).toEqual([
    413,
    [expect.stringMatching(/^Request: it is too large\. Up to 8192 kB at once\. Send it in parts\./)],
  ])
})

test('a change that another site asks for is refused', async () => {
  const { server, logbook } = await served()
  const entries = [nitrate('12 mg/L NO3')]
  for (const foreign of [
    { origin: 'http://reef.example' },
    { origin: 'null' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site' },
  ]) {
    expect((await send(server, { entries }, { ...json, ...foreign })).status).toBe(403)
  }
  expect(await logbook.received()).toBe(3)
  const own = { ...json, origin: 'http://localhost:4173', 'sec-fetch-site': 'same-origin' }
  expect((await send(server, { entries }, own)).status).toBe(200)
})
