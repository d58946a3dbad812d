import type { Entry } from '@holdfast/logbook'
import { expect, test } from 'vitest'
import { holdfastClient } from './client.ts'
import { outcome } from './outcome.ts'

/** A client whose calls come to this, and what they asked. */
function answering(answer: () => Response) {
  const asked: Request[] = []
  const client = holdfastClient('http://localhost:4173/', async (request) => {
    asked.push(request)
    return answer()
  })
  return { client, asked }
}

const json = (body: unknown, status = 200): Response => Response.json(body, { status })
const entries: readonly Entry[] = []

test('what the server answers is the data of a call that went well', async () => {
  const { client, asked } = answering(() => json({ added: ['a'], already: [], differing: [] }))
  const sent = await outcome(client.POST('/api/entries', { body: { entries } }))
  expect(sent).toEqual({ ok: true, data: { added: ['a'], already: [], differing: [] } })
  expect([asked[0].method, asked[0].url]).toEqual(['POST', 'http://localhost:4173/api/entries'])
  expect(asked[0].headers.get('content-type')).toBe('application/json')
})

test('parts of an address are written so that no name breaks it', async () => {
  const { client, asked } = answering(() => json({ lines: [] }))
  const params = { path: { system: 'a/b' }, query: { words: 'drop kit', limit: 5 } }
  await outcome(client.GET('/api/systems/{system}/entries', { params }))
  expect(asked[0].url).toBe('http://localhost:4173/api/systems/a%2Fb/entries?words=drop%20kit&limit=5')
})

test('a refusal brings its issues, and a sentence of the guard becomes one', async () => {
  const issue = { code: 'x', where: 'Log', got: 'no', accepted: 'yes', next: '' }
  const refused = answering(() => json({ issues: [issue] }, 422))
  expect(await outcome(refused.client.GET('/api/systems'))).toEqual({
    ok: false,
    answered: true,
    status: 422,
    issues: [issue],
  })
  const guarded = answering(() => new Response('Origin: "null" is another site.\n', { status: 403 }))
  const words = 'Origin: "null" is another site.'
  expect(await outcome(guarded.client.GET('/api/systems'))).toMatchObject({
    answered: true,
    issues: [{ inWords: words }],
  })
  const other = answering(() => new Response('', { status: 502 }))
  expect(await outcome(other.client.GET('/api/systems'))).toMatchObject({
    status: 502,
    issues: [{ got: 'it answered 502' }],
  })
})

test('a server that is not reached, or whose answer is cut off, may be sent the same again', async () => {
  const client = holdfastClient('http://localhost:4173', () => Promise.reject(new TypeError('no way')))
  const away = await outcome(client.GET('/api/systems'))
  expect(away).toMatchObject({ ok: false, answered: false, issues: [{ code: 'not-reached' }] })
  const cut = answering(() => new Response('{"added":[', { headers: { 'content-type': 'application/json' } }))
  const sent = await outcome(cut.client.POST('/api/entries', { body: { entries } }))
  expect(sent).toMatchObject({ ok: false, answered: false })
})
