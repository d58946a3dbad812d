import { outcome } from '@holdfast/client'
import type { Day, Event, Observation, System } from '@holdfast/ecosystem'
import type { EntryKind, JournalLine, Outbreak, OwnFact } from '@holdfast/logbook'
import { api, told } from './api.ts'
import type { Described } from './described.ts'

export interface SystemName {
  readonly id: string
  readonly name: string
}

/** All that the server tells about one system. */
export interface SystemData {
  /** The workspace that entries of this log name. */
  readonly workspace: string
  readonly system: System
  readonly observations: readonly Observation[]
  readonly events: readonly Event[]
  /** The keeper's own numbers of facts. */
  readonly ownFacts: readonly OwnFact[]
  /** The one that changed last first. */
  readonly outbreaks: readonly Outbreak[]
  /** Practical salinity as read last, of late. */
  readonly salinity_psu?: number
  readonly from: Day
  readonly asOf: Day
  /** Where the log lives, in words that follow "Your log is kept". */
  readonly kept: string
  /** Sentences about entries that the model cannot use. */
  readonly remarks: readonly string[]
}

/** @throws Error with a sentence for the page when the server does not answer or refuses */
export const fetchSystems = async (): Promise<readonly SystemName[]> =>
  told(await outcome(api.GET('/api/systems')))

/** What logging needs, without the log. @throws Error as the others do */
export async function fetchDescribed(system: string, now: Date): Promise<Described> {
  const query = { day: now.toISOString().slice(0, 10) }
  return told(
    await outcome(api.GET('/api/systems/{system}/description', { params: { path: { system }, query } })),
  )
}

/** @throws Error with a sentence for the page when the server does not answer or refuses */
export const fetchSystem = async (system: string): Promise<SystemData> =>
  told(await outcome(api.GET('/api/systems/{system}', { params: { path: { system } } })))

/** The latest entries of one kind, without the rest of the log. @throws Error as the others do */
export async function fetchOfKind(
  system: string,
  kind: EntryKind,
  limit: number,
): Promise<readonly JournalLine[]> {
  const params = { path: { system }, query: { kind, limit } }
  return told(await outcome(api.GET('/api/systems/{system}/entries', { params }))).lines
}

/** The latest entries that hold these words. @throws Error as the others do */
export async function fetchHolding(system: string, words: string): Promise<readonly JournalLine[]> {
  const params = { path: { system }, query: { words, limit: 1000 } }
  return told(await outcome(api.GET('/api/systems/{system}/entries', { params }))).lines
}
