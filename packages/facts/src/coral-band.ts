import list from './data/coral-bands.json' with { type: 'json' }

/** Nitrate and phosphate that a kind of reef is usually kept in. */
export interface CoralBand {
  readonly key: string
  readonly title: string
  /** Words a keeper uses, lower case. */
  readonly names: readonly string[]
  /** Ids of the facts of the band of nitrate and of that of phosphate. */
  readonly nitrate: string
  readonly phosphate: string
}

const all: readonly CoralBand[] = list

/** All bands, the mixed reef first. */
export const coralBands = (): readonly CoralBand[] => all

/** The band of a kind of corals by key or name, case aside; undefined where the catalogue has none. */
export function coralBand(kind: string): CoralBand | undefined {
  const word = kind.trim().toLowerCase()
  return all.find((band) => band.key === word || band.names.includes(word))
}
