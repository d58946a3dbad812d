import type { EntryOf, Stored } from './entry.ts'

type Retraction = Stored<EntryOf<'retraction'>>

/**
 * What retractions took back, each with the retraction that did: an entry, or every entry of a batch, with
 * all that corrects them, whether it came before the retraction or after. A retraction that is taken back
 * itself takes nothing. The order of receipt does not count.
 *
 * @param corrections  by the entry that they correct
 */
export function takenBack(
  received: readonly Stored[],
  corrections: ReadonlyMap<string, readonly Stored[]>,
): ReadonlyMap<string, string> {
  const inForce = retractionsInForce(
    received.filter((entry): entry is Retraction => entry.kind === 'retraction'),
  )
  const ofBatch = entriesByBatch(
    received,
    new Set(inForce.flatMap(({ body }) => (body.of === 'batch' ? [body.id] : []))),
  )
  const gone = new Map<string, string>()
  // Of several that took the same the first by its id is named: the order of receipt does not count.
  for (const { id, body } of inForce) {
    const taken = body.of === 'batch' ? (ofBatch.get(body.id) ?? []) : [body.id]
    for (const one of taken) takeWithCorrections(one, id)
  }
  return gone

  function takeWithCorrections(first: string, by: string): void {
    const waiting = [first]
    for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
      if (gone.has(id)) continue
      gone.set(id, by)
      for (const one of corrections.get(id) ?? []) waiting.push(one.id)
    }
  }
}

/** Ids of the entries of some batches; retractions are no part of what a batch holds. */
function entriesByBatch(
  received: readonly Stored[],
  batches: ReadonlySet<string>,
): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>()
  if (batches.size === 0) return found
  for (const { id, kind, batch } of received) {
    if (batch === undefined || kind === 'retraction' || !batches.has(batch)) continue
    const known = found.get(batch)
    if (known === undefined) found.set(batch, [id])
    else known.push(id)
  }
  return found
}

/**
 * The retractions that nothing in force takes back, by their ids. Those that nobody takes back are in
 * force, and from there it follows for the rest; of a circle of them none is.
 */
function retractionsInForce(all: readonly Retraction[]): readonly Retraction[] {
  const takes = (one: Retraction, other: Retraction): boolean =>
    one.body.of === 'batch' ? other.batch === one.body.id : other.id === one.body.id
  const targets = new Set(all.map(({ body }) => `${body.of} ${body.id}`))
  const aimedAt = all.filter(({ id, batch }) => targets.has(`entry ${id}`) || targets.has(`batch ${batch}`))
  const open = new Map(aimedAt.map((one) => [one, all.filter((other) => takes(other, one))]))
  const decided = new Map(all.filter((one) => !open.has(one)).map((one) => [one, true]))
  for (let before = -1; before !== decided.size; ) {
    before = decided.size
    for (const [one, by] of open) {
      if (by.some((other) => decided.get(other) === true)) decided.set(one, false)
      else if (by.every((other) => decided.get(other) === false)) decided.set(one, true)
      if (decided.has(one)) open.delete(one)
    }
  }
  return all.filter((one) => decided.get(one) === true).toSorted((a, b) => (a.id < b.id ? -1 : 1))
}
