import { type Observation, patches, reaches, type System } from '@holdfast/ecosystem'
import { algaeKind, type FactsOfSystem, wantedKind } from '@holdfast/facts'
import { readingsOf } from './water-today.ts'

/** A kind at a surface, as it was last seen. */
export interface Growth {
  readonly kind: string
  readonly surface: System['surfaces'][number]
  readonly cover: number
  /** Dry mass by the cover, g. */
  readonly mass_g: number
  /** An enclosed or built place that no animal of this tank that eats it gets to. */
  readonly unreached: boolean
}

/** Surfaces of plumbing and machines: mouths seldom get there, a hand and a lid do. */
const built: readonly Growth['surface']['kind'][] = ['plumbing_overflow', 'equipment']

/** Preference from which on an animal is taken to eat a kind. */
const eats = 0.3

/** What was seen of late and is not wanted, the largest mass first; what is at the edge of seeing is left out. */
export function growthsOf(
  system: System,
  observations: readonly Observation[],
  day: number,
  facts: FactsOfSystem,
): readonly Growth[] {
  const latest = new Map<string, Observation>()
  for (const seen of readingsOf('cover', observations, day)) latest.set(`${seen.surface} ${seen.algae}`, seen)
  return [...latest.values()]
    .flatMap((seen): readonly Growth[] => {
      const surface = system.surfaces.find(({ id }) => id === seen.surface)
      const { algae: kind, value: cover } = seen
      if (!surface || kind === undefined || wantedKind(kind)) return []
      if (cover < facts.fact('survey.cover.error').low) return []
      const mass_g = cover * surface.area_m2 * algaeKind(kind).fullCoverMass.typical
      return [{ kind, surface, cover, mass_g, unreached: isUnreached(system, surface, kind, facts) }]
    })
    .sort((a, b) => b.mass_g - a.mass_g)
}

function isUnreached(
  system: System,
  surface: Growth['surface'],
  kind: string,
  facts: FactsOfSystem,
): boolean {
  if (!surface.enclosed && !built.includes(surface.kind)) return false
  const eaters = system.animals.filter(
    ({ taxon, count, vessel = surface.vessel }) =>
      count > 0 &&
      vessel === surface.vessel &&
      taxon !== undefined &&
      facts.taste(taxon, kind).preference >= eats,
  )
  return !eaters.some(({ taxon = '', adult_size_cm }) =>
    patches.some((patch) => reaches(surface, taxon, patch, adult_size_cm, facts)),
  )
}
