import list from './data/surfaces.json' with { type: 'json' }
import { UnknownKey } from './unknown-key.ts'

export type SurfaceKindKey =
  | 'rock_face'
  | 'rock_underside'
  | 'glass'
  | 'sand'
  | 'plumbing_overflow'
  | 'equipment'
  | 'frag_rack'

/** The fixed parts of a surface, in the order in which mouths reach them. */
export type PatchKey = 'open' | 'half_hidden' | 'hidden'

/** A kind of surface that algae grow on and mouths reach or do not. */
export interface SurfaceKindFacts {
  readonly key: SurfaceKindKey
  readonly title: string
  readonly description: string
  /** Ids of the facts: what share of the area is half hidden, and what hidden; the rest is open. */
  readonly halfHidden: string
  readonly hidden: string
  /** Patches that a hand with a brush or scraper gets to. */
  readonly handReaches: readonly PatchKey[]
  /** Id of the fact: mass transfer relative to coral.s_nh4 and coral.s_po4. */
  readonly transferShare: string
}

const all = list as readonly SurfaceKindFacts[]

/**
 * Shares of the area of a surface, together 1: hidden ones first, as told, open what is left.
 *
 * @param typical  the typical value of a fact, as it holds for the system
 */
export function patchShares(
  key: SurfaceKindKey,
  typical: (fact: string) => number,
): Readonly<Record<PatchKey, number>> {
  const kind = surfaceKind(key)
  const hidden = Math.min(1, typical(kind.hidden))
  const halfHidden = Math.min(1 - hidden, typical(kind.halfHidden))
  return { open: 1 - hidden - halfHidden, half_hidden: halfHidden, hidden }
}

/** All kinds of surface. */
export const surfaceKinds = (): readonly SurfaceKindFacts[] => all

/**
 * The kind of surface of a key, such as rock_face.
 * @throws UnknownKey with the keys there are
 */
export function surfaceKind(key: string): SurfaceKindFacts {
  const found = all.find((one) => one.key === key)
  if (found === undefined) {
    throw new UnknownKey(
      'unknown-surface-kind',
      'Kind of surface',
      key,
      all.map((one) => one.key),
    )
  }
  return found
}
