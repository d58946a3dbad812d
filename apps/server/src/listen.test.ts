import { Hono } from 'hono'
import { expect, test } from 'vitest'
import { listen } from './listen.ts'

test('only this machine is listened to, on the next port where the first is taken', async () => {
  const first = await listen(new Hono(), 0)
  const second = await listen(new Hono(), first.port)
  try {
    expect(first.server.address()).toMatchObject({ address: '127.0.0.1', port: first.port })
    expect(second.server.address()).toMatchObject({ address: '127.0.0.1', port: second.port })
    expect(second.port).toBeGreaterThan(first.port)
  } finally {
    first.server.close()
    second.server.close()
  }
})
