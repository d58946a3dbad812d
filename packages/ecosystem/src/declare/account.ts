import type { Atom } from '../ledger-types.ts'

/**
 * A place that holds atoms: a pool in the system, or a place outside it. Outside accounts start at
 * nothing and may go below it (the feed tin gives what the tank gets); inside accounts may not.
 */
export interface Account {
  readonly id: string
  readonly title: string
  readonly side: 'inside' | 'outside'
  readonly atoms: readonly Atom[]
}

/** A state without atoms, such as a cover; it has rates and no counter-account. */
export interface PlainState {
  readonly id: string
  readonly title: string
  readonly unit: string
}

export const account = (
  side: Account['side'],
  id: string,
  title: string,
  atoms: readonly Atom[],
): Account => ({ id, title, side, atoms })
