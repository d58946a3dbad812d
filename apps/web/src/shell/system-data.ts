import type { Day, Event, Observation, System } from '@holdfast/ecosystem'
import type { LogEntry } from '../figure/computed.ts'

export interface SystemName {
  readonly id: string
  readonly name: string
}

/** All that the server tells about one system. */
export interface SystemData {
  readonly system: System
  readonly observations: readonly Observation[]
  readonly events: readonly Event[]
  readonly from: Day
  readonly asOf: Day
  /** Where the log lives, in words that follow "Your log is kept". */
  readonly kept: string
  readonly entries: readonly LogEntry[]
  /** Sentences about entries that the model cannot use. */
  readonly remarks: readonly string[]
}

/** Addresses are relative, so that the app runs wherever the server puts it. */
export const fetchSystems = () => fetchJson<readonly SystemName[]>('api/systems')
export const fetchSystem = (id: string) => fetchJson<SystemData>(`api/systems/${encodeURIComponent(id)}`)

/** @throws Error with a sentence for the page when the server does not answer or refuses */
async function fetchJson<T>(address: string): Promise<T> {
  const response = await fetch(address, { headers: { accept: 'application/json' } }).catch(() => undefined)
  if (!response)
    throw new Error('Holdfast does not answer. Start it again on its machine, then reload this page.')
  if (!response.ok) throw new Error(await refusal(response, address))
  return response.json() as Promise<T>
}

/** What the server says in words, or that it said nothing of use. */
async function refusal(response: Response, address: string): Promise<string> {
  const said = response.headers.get('content-type')?.startsWith('text/plain') ? await response.text() : ''
  return (
    said.trim() ||
    `Holdfast answered ${response.status} to ${address}. Reload the page, or look into its log.`
  )
}
