import { expect, test } from 'vitest'
import { served } from '../testing/served.ts'
import { nitrate, send } from './testing/keeper.ts'

test('the log of a system goes out again only where an entry came', async () => {
  const { server, logbook } = await served()
  let read = 0
  const counting = logbook.read
  Object.assign(logbook, {
    read: (...span: Parameters<typeof counting>) => {
      read++
      return counting(...span)
    },
  })
  const ask = (etag = '') =>
    server.request('/api/systems/example-reef', {
      headers: { host: 'localhost', 'if-none-match': etag },
    })
  const first = await ask()
  const etag = first.headers.get('etag') ?? ''
  expect((await first.json()).observations).toHaveLength(1)
  expect(first.headers.get('cache-control')).toBe('private, no-cache')

  read = 0
  const again = await ask(etag)
  expect([again.status, await again.text(), read]).toEqual([304, '', 0])

  await send(server, { entries: [nitrate('7 mg/L NO3')] })
  const after = await ask(etag)
  expect(after.status).toBe(200)
  expect((await after.json()).observations).toMatchObject([{ value: 5 }, { value: 7 }])
})
