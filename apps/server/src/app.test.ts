import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Issue, issueInWords, type Logbook, Refused } from '@holdfast/logbook'
import { temporaryFolder } from '@holdfast/testing'
import { expect, test } from 'vitest'
import { app } from './app.ts'
import { putExamplesIn } from './example.ts'
import { emptyLogbook, served } from './testing/served.ts'
import { smallExample } from './testing/small-example.ts'

const here = 'http://localhost:4173'

function builtWeb(): string {
  const folder = join(temporaryFolder(), 'web')
  mkdirSync(join(folder, 'assets'), { recursive: true })
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Holdfast</title>')
  writeFileSync(join(folder, 'assets', 'index-Ab12Cd34.js'), 'export {}')
  writeFileSync(join(folder, '..', 'beside.txt'), 'not ours to give')
  return folder
}

test('the page gets the systems and, of one, its description and log in the model’s days', async () => {
  const { server } = await served(emptyLogbook(), builtWeb())
  const systems = await server.request(`${here}/api/systems`)
  expect(systems.headers.get('cache-control')).toBe('no-store')
  expect(await systems.json()).toEqual([{ id: 'example-reef', name: 'Example reef' }])
  const answer = await server.request(`${here}/api/systems/example-reef`)
  expect(answer.headers.get('cache-control')).toBe('private, no-cache')
  const { system, observations, events, from, asOf, kept } = await answer.json()
  expect(system).toMatchObject({ id: 'example-reef', vessels: [{ volume_L: 60 }] })
  // 2026-02-01 is day 20485; noon and 13:00 in Berlin are 11:00 and 12:00 UTC in winter.
  expect(observations).toMatchObject([{ quantity: 'nitrate', value: 5, day: 20485 + 11 / 24 }])
  expect(events).toMatchObject([{ kind: 'water change', volume_L: 6, day: 20499 + 12 / 24 }])
  expect(from).toBe(20485 + 11 / 24)
  expect(asOf).toBeGreaterThan(events[0].day)
  expect(new Date(asOf * 86_400_000).toISOString()).toBe('2026-02-15T22:59:30.000Z')
  expect(kept).toBe('in a test')
})

/** The issues of a refusal, in words. */
async function said(answer: Response): Promise<string> {
  const { issues }: { issues: Issue[] } = await answer.json()
  return issues.map(issueInWords).join('\n')
}

test('what is not there is said in words', async () => {
  const { server } = await served(emptyLogbook(), builtWeb())
  const missing = await server.request(`${here}/api/systems/pond`)
  expect([missing.status, await said(missing)]).toEqual([
    404,
    'System: "pond" is not in this log. Choose one of api/systems.',
  ])
  const nothing = await server.request(`${here}/api/nothing`)
  expect([nothing.status, await said(nothing)]).toEqual([
    404,
    'Address: there is nothing at /api/nothing. The addresses of api/openapi.json.',
  ])
  expect((await server.request(`${here}/nothing.html`)).status).toBe(404)
})

test('the example goes into an empty log once, and beside no other system', async () => {
  const logbook = emptyLogbook()
  const example = smallExample()
  expect(await putExamplesIn(logbook, [example], new Date())).toBe(true)
  expect(await putExamplesIn(logbook, [example], new Date())).toBe(false)
  expect(await putExamplesIn(emptyLogbook(), [temporaryFolder()], new Date())).toBe(false)
  expect(await logbook.read()).toHaveLength(3)
})

test('an example with a mistake is refused with the words of the mistake, and nothing is stored', async () => {
  const logbook = emptyLogbook()
  const wrong = smallExample({ temperature: '25 foo', evaporation: '-1 L/d' })
  const refusal = await putExamplesIn(logbook, [wrong], new Date()).catch((error: unknown) => error)
  expect(refusal).toBeInstanceOf(Refused)
  expect(refusal).toMatchObject({ issues: [{ where: 'temperature' }, { where: 'evaporation' }] })
  expect(await logbook.systems()).toEqual([])
})

test('files of the app are given, hashed ones for ever, and nothing outside their folder', async () => {
  const webFolder = builtWeb()
  const { server } = await served(emptyLogbook(), webFolder)
  const page = await server.request(`${here}/`)
  expect(await page.text()).toContain('<title>Holdfast</title>')
  expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8')
  expect(page.headers.get('cache-control')).toBe('no-cache')
  const script = await server.request(`${here}/assets/index-Ab12Cd34.js`)
  expect(script.headers.get('content-type')).toBe('text/javascript; charset=utf-8')
  expect(script.headers.get('cache-control')).toBe('public, max-age=31536000, immutable')
  for (const climb of ['..%2fbeside.txt', 'assets/..%2f..%2fbeside.txt', '..%5cbeside.txt', '%00', '%ff'])
    expect((await server.request(`${here}/${climb}`)).status).toBe(404)
})

test('before the web app is built, the page says how to build it', async () => {
  const { server } = await served(emptyLogbook(), join(temporaryFolder(), 'none'))
  const page = await server.request(`${here}/`)
  expect([page.status, await page.text()]).toEqual([503, expect.stringContaining('npm run build')])
})

test('only this machine’s own pages are answered', async () => {
  const { server } = await served(emptyLogbook(), builtWeb())
  const status = async (headers: Record<string, string>): Promise<number> =>
    (await server.request('/api/systems', { headers })).status
  for (const host of ['localhost:4173', '127.0.0.1:4173', '[::1]:4173', 'LOCALHOST:4173'])
    expect(await status({ host })).toBe(200)
  for (const host of ['reef.example', 'reef.example:4173', 'localhost.reef.example', '10.0.0.7:4173'])
    expect(await status({ host })).toBe(403)
  expect(await status({ host: 'localhost:4173', origin: here })).toBe(200)
  for (const origin of ['http://reef.example', 'null', 'http://localhost:9999', 'https://localhost:4173'])
    expect(await status({ host: 'localhost:4173', origin })).toBe(403)
  const words = await server.request('/', { headers: { host: 'reef.example' } })
  expect(await words.text()).toBe(
    'Host: "reef.example" is not this machine. Open Holdfast as http://localhost with the port it printed.\n',
  )
})

test('an address takes the methods that are declared for it and no others', async () => {
  const { server } = await served(emptyLogbook(), builtWeb())
  for (const method of ['POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS']) {
    const answer = await server.request(`${here}/api/systems`, { method })
    expect([answer.status, answer.headers.get('allow')]).toEqual([405, 'GET, HEAD'])
    expect((await server.request(`${here}/`, { method })).status).toBe(405)
  }
  const reading = await server.request(`${here}/api/entries`)
  expect([reading.status, reading.headers.get('allow')]).toEqual([405, 'POST'])
  expect((await server.request(`${here}/api/systems`, { method: 'HEAD' })).status).toBe(200)
})

test('every answer carries the content policy, refusals and failures too', async () => {
  const broken: Logbook = {
    ...emptyLogbook(),
    systems: () => Promise.reject(new Error('secret place.ts:12')),
  }
  const told: unknown[] = []
  const tell = (failure: unknown): number => told.push(failure)
  const server = app({ logbook: broken, kept: '', webFolder: builtWeb(), start: '', tell })
  const failed = await server.request(`${here}/api/systems`)
  expect(failed.status).toBe(500)
  expect(await failed.text()).not.toContain('secret')
  expect(told).toEqual([new Error('secret place.ts:12')])
  const answers = [
    failed,
    await server.request(`${here}/`),
    await server.request(`${here}/none`),
    await server.request(`${here}/`, { method: 'POST' }),
    await server.request('http://reef.example/'),
  ]
  expect(answers.map(({ status }) => status)).toEqual([500, 200, 404, 405, 403])
  for (const { headers } of answers) {
    expect(headers.get('content-security-policy')).toBe(
      "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' blob: data:; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'",
    )
    expect(headers.get('x-content-type-options')).toBe('nosniff')
    expect(headers.get('referrer-policy')).toBe('no-referrer')
  }
})

test('the store’s own refusal reaches the page in the keeper’s words', async () => {
  const issue = { code: 'x', where: 'Log', got: 'it is damaged', accepted: 'A log.', next: 'Put it back.' }
  const broken: Logbook = { ...emptyLogbook(), read: () => Promise.reject(new Refused([issue])) }
  const server = app({ logbook: broken, kept: '', webFolder: '', start: '', tell: () => undefined })
  const answer = await server.request(`${here}/api/systems/reef`)
  expect([answer.status, await said(answer)]).toEqual([500, 'Log: it is damaged. A log. Put it back.'])
})

test('the health of a start names it', async () => {
  const { server } = await served(emptyLogbook(), builtWeb())
  const health = await (await server.request(`${here}/api/health`)).json()
  expect(health).toMatchObject({ program: 'holdfast', status: 'ok', start: 'this one', workspace: 'home' })
})
