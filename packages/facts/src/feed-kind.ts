import list from './data/feeds.json' with { type: 'json' }

/** A kind of feed, with the ids of the facts that hold its composition. */
export interface FeedKind {
  readonly key: string
  readonly title: string
  /** Words a label or keeper uses, lower case. */
  readonly names: readonly string[]
  /** What N, P and C are a share of: the feed as fed, or its dry matter (then times `dry`). */
  readonly basis: 'as fed' | 'dry'
  readonly N: string
  readonly P: string
  readonly C: string
  /** Dry matter as a share of the feed as fed. */
  readonly dry?: string
  /** Water as a share of the feed as fed. */
  readonly moisture?: string
  /** Share not eaten. */
  readonly uneaten: string
}

const all = list as readonly FeedKind[]

/** All kinds of feed. */
export const feedKinds = (): readonly FeedKind[] => all

/** The kind of feed that goes by a key or name, case aside; undefined where the catalogue has none. */
export function feedKind(name: string): FeedKind | undefined {
  const word = name.trim().toLowerCase()
  return all.find((kind) => kind.key === word || kind.names.includes(word))
}
