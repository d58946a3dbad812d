import { patches, reaches, type System } from '@holdfast/ecosystem'
import { type FactsOfSystem, wantedKind } from '@holdfast/facts'

/** What an animal is kept for in a system. */
export interface Purpose {
  /** Unwanted kinds that grow there and that it more than nibbles at, what it likes best first, and where it gets at them. */
  readonly kinds: readonly { readonly kind: string; readonly surfaces: readonly string[] }[]
  /** It eats settled waste too. */
  readonly eatsWaste: boolean
}

/** What a grazer does in a system: which of the kinds that grow there it eats, and on which surfaces. */
export function purposeOf(taxon: string, { algae, surfaces }: System, facts: FactsOfSystem): Purpose {
  const nibbles = facts.typical('crew_plan.nibbles')
  const likes = (food: string): number => facts.taste(taxon, food).preference
  const reached = surfaces
    .filter((surface) => patches.some((patch) => reaches(surface, taxon, patch, undefined, facts)))
    .map(({ id }) => id)
  const kinds = [...new Set(algae.map(({ kind }) => kind))]
    .filter((kind) => !wantedKind(kind) && likes(kind) >= nibbles)
    .sort((a, b) => likes(b) - likes(a))
    .map((kind) => ({ kind, surfaces: reached }))
  return { kinds, eatsWaste: likes('detritus') >= nibbles }
}
