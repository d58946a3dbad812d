import type { Stored } from './entry.ts'
import { takenBack } from './taken-back.ts'

/** What became of the entries of a log; an entry that is in none of the two maps holds. */
export interface Fates {
  /** Entries that others stand in place of, with the correction that does. */
  readonly corrected: ReadonlyMap<string, string>
  /** Entries that were taken back, with the retraction that did. */
  readonly takenBack: ReadonlyMap<string, string>
  /** Where several corrections of one entry stand side by side: the entry corrected, and all of them. */
  readonly rivals: ReadonlyMap<string, readonly string[]>
}

/**
 * What corrections and retractions make of a log: a function of what the log holds, not of the order in
 * which it came, but for one thing: of several corrections of one entry the later received stands, and
 * what corrects the others stands no more than they do.
 *
 * @param received  entries in the order of receipt
 */
export function fatesOf(received: readonly Stored[]): Fates {
  const corrections = correctionsIn(received)
  const gone = takenBack(received, corrections)
  const corrected = new Map<string, string>()
  const rivals = new Map<string, readonly string[]>()
  const present = (id: string): readonly Stored[] =>
    (corrections.get(id) ?? []).filter((one) => !gone.has(one.id))
  // From each entry that corrects none of the log down its corrections; a circle of them has no such entry.
  const waiting = firstOnes(received, corrections).map((id) => ({
    id,
    overruledBy: undefined as string | undefined,
  }))
  for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
    const next = present(one.id)
    const last = next.at(-1)?.id
    const by = last ?? one.overruledBy
    if (by !== undefined) corrected.set(one.id, by)
    if (next.length > 1)
      rivals.set(
        one.id,
        next.map(({ id }) => id),
      )
    for (const { id } of next)
      waiting.push({ id, overruledBy: one.overruledBy ?? (id === last ? undefined : last) })
  }
  return { corrected, takenBack: gone, rivals }
}

/** Corrections by the entry that they correct, in the order of receipt. */
function correctionsIn(received: readonly Stored[]): ReadonlyMap<string, readonly Stored[]> {
  const corrections = new Map<string, Stored[]>()
  for (const entry of received) {
    if (entry.replaces === undefined || entry.kind === 'retraction') continue
    const known = corrections.get(entry.replaces)
    if (known === undefined) corrections.set(entry.replaces, [entry])
    else known.push(entry)
  }
  return corrections
}

/** Ids that something corrects and that correct nothing themselves; a correction may come before what it corrects. */
function firstOnes(
  received: readonly Stored[],
  corrections: ReadonlyMap<string, unknown>,
): readonly string[] {
  const correcting = new Set<string>()
  for (const { id, kind, replaces } of received)
    if (replaces !== undefined && kind !== 'retraction' && corrections.has(id)) correcting.add(id)
  return [...corrections.keys()].filter((id) => !correcting.has(id))
}
