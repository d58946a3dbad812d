import { createHash } from 'node:crypto'
import { type Logbook, Refused } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import { app } from '../app.ts'
import { emptyLogbook, served } from '../testing/served.ts'
import { routes } from './routes.ts'
import { asked } from './testing/against-document.ts'
import { json, said } from './testing/keeper.ts'

const bytes = new TextEncoder().encode('a picture')
const sum = createHash('sha256').update(bytes).digest('hex')

const emptyExport = JSON.stringify({
  format: 'holdfast-export',
  version: 1,
  workspace: 'home',
  madeAt: '2026-03-01T12:00:00.000Z',
  leftOut: [],
  entries: [],
  attachments: [],
})

interface Sample {
  readonly good: string
  readonly bad?: string
  readonly request?: RequestInit
}

/** A good and, where there can be one, a bad address of each route, in an order in which they work. */
const samples: Readonly<Record<string, Sample>> = {
  health: { good: '/api/health' },
  listSystems: { good: '/api/systems' },
  showSystem: { good: '/api/systems/example-reef', bad: '/api/systems/pond' },
  listEntries: {
    good: '/api/systems/example-reef/entries',
    bad: '/api/systems/example-reef/entries?limit=many',
  },
  listReceived: {
    good: '/api/systems/example-reef/received',
    bad: '/api/systems/pond/received',
  },
  describeSystem: {
    good: '/api/systems/example-reef/description?day=2026-02-10',
    bad: '/api/systems/example-reef/description?day=today',
  },
  showEntry: {
    good: '/api/entries/018f3a1e-7c00-7000-8000-000000000001',
    bad: '/api/entries/018f3a1e-7c00-7000-8000-0000000000ff',
  },
  addEntries: { good: '/api/entries', request: { headers: json, body: '{"entries":[]}' } },
  putAttachment: {
    good: `/api/attachments/${sum}`,
    bad: '/api/attachments/picture',
    request: { headers: { 'content-type': 'image/png' }, body: bytes },
  },
  getAttachment: { good: `/api/attachments/${sum}`, bad: `/api/attachments/${'0'.repeat(64)}` },
  exportLogAsJSON: { good: '/api/export.json' },
  exportLogAsCSV: { good: '/api/export.csv' },
  exportLogAsXLSX: { good: '/api/export.xlsx' },
  takeOverExport: { good: '/api/export', request: { body: emptyExport } },
  showExportSchema: { good: '/api/export.schema.json' },
  showDocument: { good: '/api/openapi.json' },
}

test('every route answers good and bad questions as the document says', async () => {
  expect(Object.keys(samples).sort()).toEqual(routes.map(({ name }) => name).sort())
  const { server } = await served()
  for (const { name, method, at } of routes) {
    const { good, bad, request } = samples[name]
    expect((await asked(server, `${method} ${at}`, good, request)).status, name).toBe(200)
    if (bad === undefined) continue
    const refused = await asked(server, `${method} ${at}`, bad, request)
    expect([400, 404], name).toContain(refused.status)
    expect((await said(refused)).join(), name).not.toBe('')
  }
})

test('a store that refuses is told in its own words on every route that asks it', async () => {
  const issue = { code: 'x', where: 'Log', got: 'it is damaged', accepted: 'A log.', next: 'Put it back.' }
  const fails = () => Promise.reject(new Refused([issue]))
  const broken: Logbook = {
    ...emptyLogbook(),
    append: fails,
    asSent: fails,
    attach: fails,
    attachment: fails,
    read: fails,
    received: fails,
    systems: fails,
    takeOver: fails,
  }
  const server = app({ logbook: broken, kept: '', webFolder: '', start: '', tell: () => undefined })
  for (const { name, method, at } of routes) {
    if (['health', 'showDocument', 'showExportSchema'].includes(name)) continue
    const { good, request } = samples[name]
    const answer = await asked(server, `${method} ${at}`, good, request)
    expect([answer.status, await said(answer)], name).toEqual([
      500,
      ['Log: it is damaged. A log. Put it back.'],
    ])
  }
})
