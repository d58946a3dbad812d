import type { Stored } from './entry.ts'
import { fatesOf } from './fate.ts'

/**
 * The entries that hold, in the order of receipt: corrections in the place of what they correct, what was
 * taken back left out. Which they are does not depend on the order in which entries came, but for this: of
 * two corrections of one entry the later received holds. Of equal `knownAt` (one transaction) the later in
 * the list counts as later, so give entries in the order of receipt, as the store does.
 */
export function standing(entries: readonly Stored[]): readonly Stored[] {
  const received = inOrderOfReceipt(entries)
  const { corrected, takenBack } = fatesOf(received)
  return received.filter(({ id, kind }) => kind !== 'retraction' && !corrected.has(id) && !takenBack.has(id))
}

/** Where two or more corrections of one entry stand side by side: the entry corrected, and all of them. */
export function rivalCorrections(entries: readonly Stored[]): ReadonlyMap<string, readonly string[]> {
  return fatesOf(inOrderOfReceipt(entries)).rivals
}

/** The entries as they were received; those of the store are so already. */
export function inOrderOfReceipt(entries: readonly Stored[]): readonly Stored[] {
  const isOrdered = entries.every(
    (entry, place) => place === 0 || entries[place - 1].knownAt <= entry.knownAt,
  )
  return isOrdered ? entries : entries.toSorted((a, b) => compare(a.knownAt, b.knownAt))
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
