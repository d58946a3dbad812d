import list from './data/measures.json' with { type: 'json' }
import type { Provenance } from './fact.ts'
import { UnknownKey } from './unknown-key.ts'

/** How well the claim in `effect` is known: by trial, by looking on, by sums, or as keepers tell it. */
export type Evidence = 'published experiment' | 'published observation' | 'arithmetic' | 'common practice'

/** Something that a keeper may do, and what is to be known before. */
export interface Measure {
  readonly key: string
  readonly title: string
  readonly how: string
  /** What must be at hand before one begins. */
  readonly prepare: string
  readonly effect: string
  /** How one sees that it worked. */
  readonly seen: string
  /** When and how it ends. */
  readonly ends: string
  /** For waiting alone: what ends it before its day. */
  readonly stop?: string
  readonly evidence: Evidence
  /** Days until something shows: soonest, and the day before which it is not judged. */
  readonly days: { readonly low: number; readonly high: number }
  readonly risks: string
  /** Keys of the cautions that stand before it. */
  readonly cautions: readonly string[]
  readonly source: string
  readonly provenance: Provenance
}

const all = list as readonly Measure[]
const byKey = new Map(all.map((one) => [one.key, one]))

/** All measures, waiting first. */
export const measures = (): readonly Measure[] => all

/** @throws UnknownKey with the nearest measures */
export function measure(key: string): Measure {
  const found = byKey.get(key)
  if (found === undefined) throw new UnknownKey('unknown-measure', 'Measure', key, byKey.keys())
  return found
}
