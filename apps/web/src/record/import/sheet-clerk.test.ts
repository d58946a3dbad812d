import { holdfastClient } from '@holdfast/client'
import type { Entry } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import type { FromWorker, SheetAsked } from './protocol.ts'
import { SheetClerk } from './sheet-clerk.ts'

/** A log of one system that takes what is sent, until it is away. */
function log() {
  const stored: Entry[] = []
  const state = { isAway: false }
  const fetch = async (request: Request): Promise<Response> => {
    if (state.isAway) throw new TypeError('no way')
    const { pathname } = new URL(request.url)
    if (request.method === 'POST') {
      const { entries }: { readonly entries: readonly Entry[] } = await request.json()
      const added = entries.filter(({ id }) => !stored.some((one) => one.id === id))
      stored.push(...added)
      return Response.json({ added: added.map(({ id }) => id), already: [], differing: [] })
    }
    if (pathname.endsWith('/received'))
      return Response.json({
        entries: stored.map((entry) => ({ ...entry, knownAt: '2026-03-02T00:00:00Z' })),
      })
    return Response.json([{ id: 'reef', name: 'Reef' }])
  }
  return { stored, state, fetch }
}

function clerkOf({ fetch }: ReturnType<typeof log>) {
  const said: FromWorker[] = []
  const clerk = new SheetClerk(
    (reply) => said.push(reply),
    (server) => holdfastClient(server, fetch),
  )
  return { clerk, last: () => said.at(-1) }
}

const asked = (text: string): SheetAsked => ({
  number: 1,
  file: new Blob([text]),
  fileName: 'log.csv',
  server: 'http://localhost:4173',
  workspace: 'home',
  system: 'reef',
  timeZone: 'Europe/Berlin',
  batch: 'import-1',
})

const rows = Array.from({ length: 900 }, (_, at) => {
  const day = new Date(Date.UTC(2023, 0, 1 + at)).toISOString().slice(0, 10)
  return `${day},${5 + (at % 7)},${420 + (at % 5)}`
})
const sheet = ['Date,NO3 (mg/L),Ca (mg/L)', ...rows].join('\n')

test('a sheet is stored whole where the log goes away in the middle, and nothing of it twice', async () => {
  const server = log()
  let posts = 0
  const fetch = async (request: Request): Promise<Response> => {
    const answer = await server.fetch(request)
    posts += request.method === 'POST' ? 1 : 0
    // The second part arrives, and its answer is lost.
    if (posts === 2 && request.method === 'POST') throw new TypeError('cut')
    return answer
  }
  const cut = clerkOf({ ...server, fetch })
  await cut.clerk.receive({ type: 'read', asked: asked(sheet) })
  expect(cut.last()).toMatchObject({ type: 'read', preview: { fresh: { reading: 1800 } } })
  await cut.clerk.receive({ type: 'store' })
  expect(cut.last()).toMatchObject({ type: 'unsent', of: 1800, issues: [{ code: 'not-reached' }] })
  expect(cut.last()).not.toHaveProperty('sent', 1800)
  await cut.clerk.receive({ type: 'store' })
  expect(cut.last()).toEqual({ type: 'stored' })
  expect(server.stored).toHaveLength(1800)
})

test('a log that cannot be asked is said, and asked again', async () => {
  const server = log()
  const { clerk, last } = clerkOf(server)
  server.state.isAway = true
  await clerk.receive({ type: 'read', asked: asked(sheet) })
  expect(last()).toMatchObject({ type: 'failed', issues: [{ code: 'not-reached' }] })
  server.state.isAway = false
  await clerk.receive({ type: 'read', asked: asked(sheet) })
  expect(last()).toMatchObject({ type: 'read' })
})

test('nothing is stored of a sheet that is none', async () => {
  const server = log()
  const { clerk, last } = clerkOf(server)
  await clerk.receive({ type: 'read', asked: asked('a,b\n1,2\n') })
  expect(last()).toMatchObject({ type: 'refused', issues: [{ code: 'no-header' }] })
  await clerk.receive({ type: 'store' })
  expect(server.stored).toEqual([])
})
