import canonicalize from 'canonicalize'

import { readEntry } from '../entries/read-entry.ts'
import { type Issue, Refused } from '../issue.ts'
import type { Appended, Sent } from '../logbook.ts'
import { rowOf } from './entry-row.ts'
import type { EntryRow } from './tables.ts'

/** What a store has already of that which concerns a sending. */
export interface Present {
  /** The last receipt of the workspace; 0 in an empty one. */
  readonly receipt: number
  /** The rows under the ids sent. */
  readonly rows: readonly Pick<EntryRow, 'id' | 'document'>[]
  /** When each entry that is new counts as received, an ISO instant. */
  knownAt(entry: Sent): string
}

/** Which rows a sending adds, and what becomes of its entries. */
export function receive(
  entries: readonly Sent[],
  present: Present,
): { readonly rows: readonly EntryRow[]; readonly appended: Appended } {
  const stored = new Map(present.rows.map(({ id, document }) => [id, document]))
  const appended = { added: [] as string[], already: [] as string[], differing: [] as string[] }
  const rows: EntryRow[] = []
  for (const entry of entries) {
    const { id } = entry
    const document = stored.get(id)
    if (document === undefined) {
      const row = rowOf(entry, present.receipt + rows.length + 1, present.knownAt(entry))
      rows.push(row)
      stored.set(id, row.document)
      appended.added.push(id)
    } else {
      appended.already.push(id)
      if (meaningOf(JSON.parse(document)) !== meaningOf(entry)) appended.differing.push(id)
    }
  }
  return { rows, appended }
}

/** What an entry says, apart from when and where it was written down; of any version. */
function meaningOf(sent: unknown): string | undefined {
  const read = readEntry(sent)
  if (!read.ok) return undefined
  const { system, kind, at, replaces, body } = read.entry
  return canonicalize([system, kind, at, replaces ?? null, body])
}

/** @throws Refused with all issues when an entry is none, or is another workspace's */
export function refuseUnreadable(entries: readonly Sent[], workspace: string): void {
  const issues = entries.flatMap((entry) => {
    const read = readEntry(entry)
    if (!read.ok) return read.issues
    return read.entry.workspace === workspace ? [] : [foreign(read.entry, workspace)]
  })
  if (issues.length > 0) throw new Refused(issues)
}

function foreign({ id, workspace }: Sent, ours: string): Issue {
  return {
    code: 'other-workspace',
    where: `Entry ${id}`,
    got: `it belongs to workspace "${workspace}"`,
    accepted: `This log is that of "${ours}".`,
    next: 'Send it to its own workspace. Nothing was stored.',
  }
}
