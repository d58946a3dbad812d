import list from './data/surfaces.json' with { type: 'json' }
import type { Provenance } from './fact.ts'
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
  /** Shares of the area, together 1. */
  readonly patchShares: Readonly<Record<PatchKey, number>>
  /** Patches that a hand with a brush or scraper gets to. */
  readonly handReaches: readonly PatchKey[]
  /** Id of the fact: mass transfer relative to coral.s_nh4 and coral.s_po4. */
  readonly transferShare: string
  /** Of the patch shares and the reach of the hand. */
  readonly provenance: Provenance
  readonly note: string
}

const all = list as readonly SurfaceKindFacts[]

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
