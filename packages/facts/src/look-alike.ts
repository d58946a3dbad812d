import table from './data/look-alikes.json' with { type: 'json' }

/** Two kinds that are taken for each other, and the one test that parts them. */
export interface LookAlike {
  readonly pair: readonly [string, string]
  readonly test: string
  /** Traits of which any one parts the two, the best first. */
  readonly traits: readonly string[]
  /** Whether a bit is touched for it: then it waits while the growth may be slime. */
  readonly touches: boolean
}

const all = table.pairs as unknown as readonly LookAlike[]

export const lookAlikesKnownBy = { source: table.source, provenance: table.provenance } as const

export const lookAlikes = (): readonly LookAlike[] => all
