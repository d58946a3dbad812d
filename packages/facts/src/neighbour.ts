import list from './data/neighbours.json' with { type: 'json' }
import type { Provenance } from './fact.ts'
import type { Grazer } from './grazer.ts'
import { meant, whom } from './whom.ts'

export type ThreatRole = 'predator of crew' | 'aggressor' | 'competitor' | 'sensitive coral'

/** One way in which a neighbour and animals of the crew do not go together. */
export interface Threat {
  /** Of a sensitive coral the direction is turned: those named threaten it. */
  readonly role: ThreatRole
  /** Groups and taxa of grazers, see `Whom`. */
  readonly whom: readonly string[]
  /** Chance within a year that an exposed animal or colony is lost or badly harmed, where the condition holds. */
  readonly severity: number
  readonly condition: string
  /** Holds from this size of the neighbour on. */
  readonly fromSize_cm?: number
  /** Holds in vessels smaller than this. */
  readonly belowVolume_L?: number
  readonly source: string
  readonly also?: readonly string[]
  readonly provenance: Provenance
}

/** Who lives beside the crew: what eats it, drives it off, eats its food, or suffers from it. */
export interface Neighbour {
  readonly key: string
  readonly title: string
  /** Genera, species and words of the trade, lower case; none where it goes by the crew itself. */
  readonly names: readonly string[]
  readonly threats: readonly Threat[]
}

const all = list as readonly Neighbour[]
const byKey = new Map(all.map((one) => [one.key, one]))
const byName = new Map<string, readonly Neighbour[]>()
for (const one of all) for (const name of one.names) byName.set(name, [...(byName.get(name) ?? []), one])

/** All neighbours, in the order of the table. */
export const neighbours = (): readonly Neighbour[] => all

/**
 * The rows that an animal or coral goes by: by key, else by its whole name, else by its genus; case aside.
 * None where the catalogue knows of no quarrel.
 */
export function neighboursNamed(name: string): readonly Neighbour[] {
  const word = name.trim().toLowerCase()
  const own = byKey.get(word)
  if (own) return [own]
  return byName.get(word) ?? byName.get(word.split(' ', 1)[0]) ?? []
}

/** Circumstances that decide whether a threat holds; what is not told is taken to be the worst. */
export interface Circumstances {
  /** Of the neighbour. */
  readonly size_cm?: number | undefined
  /** Of the vessel. */
  readonly volume_L?: number | undefined
}

/** Does a threat hold for a neighbour of this size in a vessel of this volume. */
export const holds = (threat: Threat, { size_cm, volume_L }: Circumstances): boolean =>
  (size_cm === undefined || size_cm >= (threat.fromSize_cm ?? 0)) &&
  (volume_L === undefined || volume_L < (threat.belowVolume_L ?? Number.POSITIVE_INFINITY))

/** Share of the animals of a taxon that a threat is about, 0 to 1: limits of size have soft edges. */
export const exposed = (threat: Threat, animal: Grazer, size_cm?: number): number =>
  Math.max(0, ...threat.whom.map((text) => meant(whom(text), animal, size_cm)))
