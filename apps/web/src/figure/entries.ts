import { outcome } from '@holdfast/client'
import { useEffect, useState } from 'preact/hooks'
import { api, told } from '../shell/api.ts'
import type { LogEntry } from './computed.ts'

/** Entries asked for so far; an entry never changes. */
const known = new Map<string, LogEntry>()

/** What entries of the log say, in the order asked. @throws Error with a sentence for the page */
export const entriesOf = (ids: readonly string[]): Promise<readonly LogEntry[]> =>
  Promise.all(ids.map(entryOf))

async function entryOf(id: string): Promise<LogEntry> {
  const before = known.get(id)
  if (before) return before
  const { entry, says } = told(await outcome(api.GET('/api/entries/{id}', { params: { path: { id } } })))
  const found = { id, at: entry.at, text: says }
  known.set(id, found)
  return found
}

export interface EntriesAsked {
  /** Undefined until the log has answered. */
  readonly entries: readonly LogEntry[] | undefined
  readonly trouble: string
}

/** Entries of the log for a view. */
export function useEntries(ids: readonly string[]): EntriesAsked {
  const [asked, setAsked] = useState<EntriesAsked>({ entries: undefined, trouble: '' })
  useEffect(() => {
    let overtaken = false
    entriesOf(ids).then(
      (entries) => overtaken || setAsked({ entries, trouble: '' }),
      (error: unknown) =>
        overtaken ||
        setAsked((before) => ({
          ...before,
          trouble: error instanceof Error ? error.message : String(error),
        })),
    )
    return () => {
      overtaken = true
    }
  }, [ids.join(' ')])
  return asked
}
