import { holdfastClient, type Outcome, outcome } from '@holdfast/client'
import { Refused } from '@holdfast/logbook'
import type { Record } from './record.ts'

/** A log behind a server, such as http://localhost:4173. */
export function serverRecord(server: string): Record {
  const client = holdfastClient(server)
  return {
    async systems() {
      const systems = told(await outcome(client.GET('/api/systems')))
      return systems.map(({ id }) => id)
    },
    async describedOn(system, day) {
      const params = { path: { system }, query: { day } }
      return told(await outcome(client.GET('/api/systems/{system}/description', { params })))
    },
    async add(entries) {
      return told(await outcome(client.POST('/api/entries', { body: { entries } })))
    },
    async page({ system, ...query }) {
      const params = { path: { system }, query }
      return told(await outcome(client.GET('/api/systems/{system}/entries', { params })))
    },
    async line(id) {
      return told(await outcome(client.GET('/api/entries/{id}', { params: { path: { id } } })))
    },
  }
}

/** What the server told. @throws Refused with its issues, or that it was not reached */
function told<Data>(answer: Outcome<Data>): Data {
  if (answer.ok) return answer.data
  throw new Refused(answer.issues)
}
