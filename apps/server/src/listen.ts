import type { Server } from 'node:http'
import { createAdaptorServer } from '@hono/node-server'
import type { Hono } from 'hono'

const tries = 20

/** A server that listens, and where. */
export interface Listening {
  readonly server: Server
  readonly port: number
}

/**
 * Listens on this machine only, on the first free port from `from` on (0: any free one).
 *
 * @throws the system's error when none of the next ports is free or listening is not allowed
 */
export async function listen(app: Hono, from: number): Promise<Listening> {
  for (let port = from; ; port++) {
    // The adaptor makes a plain HTTP server when it is given no other.
    const server = createAdaptorServer({ fetch: app.fetch }) as Server
    try {
      return { server, port: await bound(server, port) }
    } catch (error) {
      const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE'
      if (!taken || port >= from + tries || port >= 65_535) throw error
    }
  }
}

function bound(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject)
      const address = server.address()
      resolve(typeof address === 'object' && address !== null ? address.port : port)
    })
  })
}
