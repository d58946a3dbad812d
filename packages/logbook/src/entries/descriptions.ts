import type { System } from '@holdfast/ecosystem'

import type { EntryOf, Stored } from './entry.ts'
import { inOrderOfReceipt, standing } from './standing.ts'

type Description = Stored<EntryOf<'system'>>

/** A description and the moment (as `at` of an entry) from which it holds. */
export interface Described {
  readonly from: string
  readonly system: System
  readonly entry: string
}

/**
 * The descriptions that stand, in the order in which they hold. A 'change' holds from its own day. A
 * 'mend' holds from the day of the statement that it mends: the one that it replaces, or else the latest
 * change told for a day not after its own; it counts over that statement, whichever was received first.
 * Of two that are told alike for one day the later received comes last.
 *
 * @param entries  in the order of receipt
 */
export function descriptions(entries: readonly Stored[]): readonly Described[] {
  const all = new Map(
    inOrderOfReceipt(entries).flatMap((one) => (one.kind === 'system' ? [[one.id, one]] : [])),
  )
  const stand = standing(entries).filter((entry): entry is Description => entry.kind === 'system')
  const changes = stand.filter(({ body }) => body.tells === 'change')
  return stand
    .map((entry) => ({ entry, from: fromOf(entry, all, changes) }))
    .sort(
      (a, b) => compare(a.from, b.from) || rank(a.entry) - rank(b.entry) || compare(a.entry.at, b.entry.at),
    )
    .map(({ entry, from }) => ({ from, system: entry.body.system, entry: entry.id }))
}

function fromOf(
  entry: Description,
  all: ReadonlyMap<string, Description>,
  changes: readonly Description[],
): string {
  const seen = new Set<string>()
  let one = entry
  // A mend of a mend leads on to what both mend.
  while (one.body.tells === 'mend' && !seen.has(one.id)) {
    seen.add(one.id)
    const mended = one.replaces === undefined ? undefined : all.get(one.replaces)
    if (mended === undefined) return latestUpTo(one.at, changes) ?? one.at
    one = mended
  }
  return one.at
}

function latestUpTo(at: string, changes: readonly Description[]): string | undefined {
  const before = changes.map((one) => one.at).filter((from) => from.slice(0, 10) <= at.slice(0, 10))
  return before.toSorted(compare).at(-1)
}

const rank = ({ body }: Description): number => (body.tells === 'mend' ? 1 : 0)
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
