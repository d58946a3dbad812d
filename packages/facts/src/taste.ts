import { algaeKind } from './algae-kind.ts'
import table from './data/tastes.json' with { type: 'json' }
import type { Provenance } from './fact.ts'

/** How willingly an animal eats a kind of algae when nothing else is offered. */
export interface Taste {
  /** Rate relative to the animal's appetite, 0 to 1; 0.2 and less is nibbling and no control. */
  readonly preference: number
  readonly source: string
  readonly also?: readonly string[]
  /** Of the statement in the source; `confidence` is of the number. */
  readonly provenance: Provenance
  readonly confidence: 'low' | 'medium'
  /** Taxon this was taken over from. */
  readonly copiedFrom?: string
  /** True where the copy was changed by keepers' experience. */
  readonly changed?: boolean
  /** Kind whose taste was multiplied, where the kind has none of its own. */
  readonly derivedFrom?: string
  readonly note?: string
}

const tastes = new Map(
  Object.entries(table as Readonly<Record<string, Readonly<Record<string, Taste>>>>).map(([taxon, kinds]) => [
    taxon,
    new Map(Object.entries(kinds)),
  ]),
)

const nothing: Taste = {
  preference: 0,
  source: 'holdfast-estimate',
  provenance: 'estimate',
  confidence: 'low',
}

/**
 * The taste of a taxon for a kind of algae, or for detritus. A kind without tastes of its own (red_turf,
 * caulerpa, brown_crust_lobe, chrysophyte) takes those of another kind times a factor, an estimate within
 * a factor of two. A taxon that is no grazer of the catalogue eats no algae.
 *
 * @throws UnknownKey where the kind is neither a kind of algae nor detritus
 */
export function taste(taxon: string, kind: string): Taste {
  const own = tastes.get(taxon)?.get(kind)
  if (own !== undefined) return own
  if (kind === 'detritus') return nothing
  const { dietKey, dietFactor } = algaeKind(kind)
  const other = tastes.get(taxon)?.get(dietKey)
  if (other === undefined) return nothing
  return {
    ...other,
    preference: Number((other.preference * dietFactor).toPrecision(6)),
    provenance: 'estimate',
    confidence: 'low',
    derivedFrom: dietKey,
  }
}
