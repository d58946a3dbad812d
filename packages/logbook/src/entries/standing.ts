import type { Entry, Stored } from './entry.ts'

/**
 * The entries that hold: corrections in the place of what they correct, what was taken back left out.
 *
 * Of two corrections of one entry the later received holds. Of equal `knownAt` (one transaction) the
 * later in the list counts as later, so give entries in the order of receipt, as the store does. A
 * retraction works on the entry and on the corrections of it that were received before; taking back a
 * retraction brings back what it took. Order is that of receipt.
 */
export function standing(entries: readonly Stored[]): readonly Stored[] {
  const received = entries.toSorted((a, b) => compare(a.knownAt, b.knownAt))
  const gone = takenBack(received)
  const present = received.filter((entry) => entry.kind !== 'retraction' && !gone.has(entry.id))
  const ids = new Map(present.map((entry) => [entry.id, entry]))
  const holds = new Map<string, Stored>()
  for (const entry of present) holds.set(firstOf(entry, ids), entry)
  return present.filter((entry) => holds.get(firstOf(entry, ids)) === entry)
}

/** Ids that retractions took back; a later retraction decides over an earlier, so it is read first. */
function takenBack(received: readonly Stored[]): ReadonlySet<string> {
  const gone = new Set<string>()
  for (const [place, entry] of [...received.entries()].reverse()) {
    if (entry.kind !== 'retraction' || gone.has(entry.id)) continue
    const before = received.slice(0, place)
    const { of, id } = entry.body
    if (of === 'batch') {
      for (const one of before) if (one.batch === id) gone.add(one.id)
    } else for (const one of correctionsOf(id, before)) gone.add(one)
  }
  return gone
}

/** The entry and every entry that corrects it, directly or through another. */
function correctionsOf(id: string, received: readonly Entry[]): ReadonlySet<string> {
  const line = new Set([id])
  for (const entry of received)
    if (entry.replaces !== undefined && line.has(entry.replaces)) line.add(entry.id)
  return line
}

/** The first entry of a line of corrections; a line broken by a retraction begins anew. */
function firstOf(entry: Entry, ids: ReadonlyMap<string, Entry>): string {
  const seen = new Set<string>()
  let id = entry.id
  for (let next = entry.replaces; next !== undefined && !seen.has(next); next = ids.get(next)?.replaces) {
    seen.add(next)
    id = next
  }
  return id
}

/** Where two or more corrections of one entry stand side by side: the entry corrected, and all of them. */
export function rivalCorrections(entries: readonly Stored[]): ReadonlyMap<string, readonly string[]> {
  const corrections = new Map<string, string[]>()
  for (const { id, replaces } of entries) {
    if (replaces !== undefined) corrections.set(replaces, [...(corrections.get(replaces) ?? []), id])
  }
  return new Map([...corrections].filter(([, rivals]) => rivals.length > 1))
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
