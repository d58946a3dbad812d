import { type Client, outcome } from '@holdfast/client'
import type { Issue, Stored } from '@holdfast/logbook'
import type { SystemName } from '../../shell/system-data.ts'

/** The log could not be asked; the issues say why. */
export class NotAnswered extends Error {
  readonly issues: readonly Issue[]

  constructor(issues: readonly Issue[]) {
    super(issues[0]?.code)
    this.issues = issues
  }
}

/** What a sheet is held against, asked for once and kept as long as the worker lives. */
export class LogOf {
  readonly #client: Client
  readonly #received = new Map<string, readonly Stored[]>()
  #systems: readonly SystemName[] | undefined
  readonly #notes = new Map<string, readonly Stored[]>()

  constructor(client: Client) {
    this.#client = client
  }

  /** @throws NotAnswered */
  async systems(): Promise<readonly SystemName[]> {
    if (this.#systems !== undefined) return this.#systems
    const asked = await outcome(this.#client.GET('/api/systems'))
    if (!asked.ok) throw new NotAnswered(asked.issues)
    this.#systems = asked.data
    return asked.data
  }

  /** Every entry of a system, in the order of receipt. @throws NotAnswered */
  async received(system: string): Promise<readonly Stored[]> {
    const known = this.#received.get(system)
    if (known !== undefined) return known
    const params = { path: { system } }
    const asked = await outcome(this.#client.GET('/api/systems/{system}/received', { params }))
    if (!asked.ok) throw new NotAnswered(asked.issues)
    this.#received.set(system, asked.data.entries)
    return asked.data.entries
  }

  /** The notes of a system that hold, which is where imports leave their answers. @throws NotAnswered */
  async notes(system: string): Promise<readonly Stored[]> {
    const known = this.#received.get(system) ?? this.#notes.get(system)
    if (known !== undefined) return known
    let notes: readonly Stored[] = []
    let before: string | undefined
    do {
      const query = { kind: 'note', limit: 1000, ...(before !== undefined && { before }) } as const
      const params = { path: { system }, query }
      const asked = await outcome(this.#client.GET('/api/systems/{system}/entries', { params }))
      if (!asked.ok) throw new NotAnswered(asked.issues)
      const { lines, next } = asked.data
      notes = [...notes, ...lines.flatMap(({ entry, state }) => (state === 'holds' ? [entry] : []))]
      before = next
    } while (before !== undefined)
    this.#notes.set(system, notes.toReversed())
    return notes.toReversed()
  }
}
