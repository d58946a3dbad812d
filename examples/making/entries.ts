import { type Entry, kinds, readEntry } from '@holdfast/logbook'
import { v5 } from 'uuid'
import type { Deed, Story } from './story.ts'

/** Namespace of the entries of the examples; made once and never changed. */
const namespace = '0d2b8a6e-52a4-4b1f-9f0e-3a4c77c1d9e2'

const newest = new Map<string, number>(kinds.map(({ name, v }) => [name, v]))

/** Entries of the log out of what was done; the id is made of place in the day, kind and text. */
export function entriesOf({ document }: Story, deeds: readonly Deed[]): readonly Entry[] {
  const counts = new Map<string, number>()
  return deeds.map(({ date, kind, body }) => {
    const key = JSON.stringify([document.id, date, kind, body])
    const count = (counts.get(key) ?? 0) + 1
    counts.set(key, count)
    const read = readEntry({
      id: v5(JSON.stringify([key, count]), namespace),
      workspace: 'home',
      system: document.id,
      kind,
      v: newest.get(kind),
      at: date,
      precision: 'day',
      madeAt: `${date}T18:30:00Z`,
      by: 'keeper',
      device: 'example',
      body,
    })
    if (!read.ok) throw new Error(read.issues.map(({ where, got }) => `${where}: ${got}`).join('\n'))
    return read.entry
  })
}

/** The same as the store would give them back: received at the end of their day. */
export const received = (entries: readonly Entry[]) =>
  entries.map((entry) => ({ ...entry, knownAt: entry.madeAt }))

/** The entries of a log.json. */
export const entriesIn = (text: string): readonly Entry[] =>
  (JSON.parse(text) as unknown[]).map((one) => {
    const read = readEntry(one)
    if (!read.ok) throw new Error(read.issues.map(({ where, got }) => `${where}: ${got}`).join('\n'))
    return read.entry
  })
