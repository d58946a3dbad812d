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
  const batches = new Map<string, string>()
  const gone = new Map<string, string>()
  for (const { id, body } of inForce) {
    if (body.of === 'batch') batches.set(body.id, batches.get(body.id) ?? id)
    else takeWithCorrections(body.id, id)
  }
  if (batches.size > 0)
    for (const { id, kind, batch } of received) {
      const by = batch === undefined ? undefined : batches.get(batch)
      if (by !== undefined && kind !== 'retraction') takeWithCorrections(id, by)
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
