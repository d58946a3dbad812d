import { type BodyOf, composeEntry, type Entry, type EntryKind, type Moment } from '@holdfast/logbook'
import type { Described } from '../../shell/described.ts'
import { today } from './when.ts'

/** Who writes, as every entry of this page says. */
export const writer = { by: 'keeper', device: 'browser' } as const

interface Written<Kind extends EntryKind> {
  readonly kind: Kind
  readonly body: BodyOf<Kind>
  readonly moment: Moment
  readonly replaces?: string
}

/** An entry written now, with its id. */
export function entryOf<Kind extends EntryKind>(
  { system, workspace }: Described,
  { moment, ...written }: Written<Kind>,
): Entry {
  const parts = { workspace, system: system.id, ...written, ...moment, ...writer }
  // A kind that is known only at run time gives an entry of one of them all.
  return composeEntry(parts, new Date()) as Entry
}

/** Takes back an entry or an import; taking back a retraction brings back what it took. */
export function retractionOf(described: Described, of: 'entry' | 'batch', id: string): Entry {
  const at = today(described.system.timeZone, new Date())
  return entryOf(described, { kind: 'retraction', body: { of, id }, moment: { at, precision: 'day' } })
}
