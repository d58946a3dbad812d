import createClient, { type Client as Calls } from 'openapi-fetch'
import type { paths } from './paths.ts'

/** The calls of the API, each typed by the document: `client.GET('/api/systems')`. */
export type Client = Calls<paths>

/**
 * Asks a server of Holdfast.
 *
 * @param server  its address, such as http://localhost:4173; '.' in a page that it serves
 * @param fetch   what carries the calls, where it is not that of the machine
 * @example await outcome(holdfastClient('http://localhost:4173').GET('/api/systems'))
 */
export function holdfastClient(server: string, fetch?: (request: Request) => Promise<Response>): Client {
  return createClient<paths>({ baseUrl: server, ...(fetch && { fetch }) })
}
