import { expect, test } from 'vitest'
import { app } from '../app.ts'
import { emptyLogbook, served } from '../testing/served.ts'
import { asked } from './testing/against-document.ts'
import { said } from './testing/keeper.ts'

const route = 'post /api/export'
const bring = (server: Parameters<typeof asked>[0], body: BodyInit) =>
  asked(server, route, '/api/export', { headers: { 'content-type': 'application/octet-stream' }, body })

test.each(['json', 'csv', 'xlsx'])(
  'a log goes out as %s and into an empty folder, the same to the last entry, and twice changes nothing',
  async (format) => {
    const { server, logbook } = await served()
    const bytes = await (await server.request(`http://localhost/api/export.${format}`)).arrayBuffer()
    const empty = emptyLogbook()
    const other = app({ logbook: empty, kept: '', webFolder: '', start: '', tell: () => undefined })
    const all = await logbook.read()
    expect(await (await bring(other, bytes)).json()).toMatchObject({
      systems: ['example-reef'],
      added: all.length,
      already: 0,
    })
    expect(await empty.read()).toEqual(all)
    expect(await (await bring(other, bytes)).json()).toMatchObject({ added: 0, already: all.length })
  },
)

test('what is no whole export is refused in words, and nothing is stored', async () => {
  const { server, logbook } = await served()
  const before = await logbook.received()
  const cut = (await (await server.request('http://localhost/api/export.json')).text()).slice(0, -40)
  for (const body of ['Date,NO3\n2026-01-01,5\n', cut]) {
    const answer = await bring(server, body)
    expect(answer.status).toBe(422)
    expect((await said(answer)).join()).toContain('othing was stored')
  }
  expect(await logbook.received()).toBe(before)
})
