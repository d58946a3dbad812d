import list from './data/coral-bands.json' with { type: 'json' }
import type { Provenance } from './fact.ts'

/** Nitrate and phosphate that a kind of reef is usually kept in. */
export interface CoralBand {
  readonly key: string
  readonly title: string
  /** Words a keeper uses, lower case. */
  readonly names: readonly string[]
  /** mg L⁻¹ of the ion NO3. */
  readonly NO3_mg_L: { readonly low: number; readonly high: number }
  /** mg L⁻¹ of the ion PO4. */
  readonly PO4_mg_L: { readonly low: number; readonly high: number }
  readonly source: string
  readonly provenance: Provenance
}

const all = list as readonly CoralBand[]

/** All bands, the mixed reef first. */
export const coralBands = (): readonly CoralBand[] => all

/** The band of a kind of corals by key or name, case aside; undefined where the catalogue has none. */
export function coralBand(kind: string): CoralBand | undefined {
  const word = kind.trim().toLowerCase()
  return all.find((band) => band.key === word || band.names.includes(word))
}
