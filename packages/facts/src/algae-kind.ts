import list from './data/algae.json' with { type: 'json' }
import type { Provenance, Range } from './fact.ts'
import { UnknownKey } from './unknown-key.ts'

/**
 * A kind of algae as keepers tell them apart: a group of species with one way of growing. Growth is net,
 * over 24 h with 12 h of light above saturation, nutrients in plenty, thin, at the best temperature.
 */
export interface AlgaeKind {
  readonly key: string
  readonly title: string
  readonly latin: string
  readonly group: string
  readonly form: string
  /** d⁻¹ */
  readonly growth: Range
  /** Half-saturation of steady growth (not of uptake) in dissolved inorganic N at the frond, µmol L⁻¹. */
  readonly halfSaturationN: Range
  /** The same in phosphate, µmol L⁻¹. */
  readonly halfSaturationP: Range
  /** Onset of light saturation of a thin layer, µmol photons m⁻² s⁻¹. */
  readonly lightSaturation: Range
  /** Light from which an unacclimated stand begins to lose growth, µmol photons m⁻² s⁻¹; weak. */
  readonly lightInhibition: number
  /** °C */
  readonly temperatureBest: number
  /** Height of an ungrazed stand, mm. */
  readonly canopyHeight: number
  /** Dry mass, ash and salt included, where it hides the surface, g m⁻². */
  readonly fullCoverMass: Range
  /** g N per g dry: starved, with readable nutrients, fed. */
  readonly tissueN: Range
  /** g P per g dry: starved, with readable nutrients, fed. */
  readonly tissueP: Range
  /** Organic C, g per g dry. */
  readonly tissueC: number
  /** Share of the standing mass that drifts off by itself, d⁻¹. */
  readonly shed: Range
  /** Dry mass that grazing cannot take, g m⁻²; an estimate for every kind. */
  readonly stubble: Range
  /** Chance that a propagule takes hold relative to a diatom on bare rock, 0 to 1. */
  readonly settlesOnBare: number
  readonly settlesOnCrust: number
  readonly fixesN2: 'no' | 'in part' | 'many'
  readonly usesOrganicP: 'some' | 'yes'
  readonly spreadBy: string
  readonly overgrows: readonly string[]
  readonly toxinHazard: string
  /** Kind whose tastes hold for this one, times `dietFactor`. */
  readonly dietKey: string
  readonly dietFactor: number
  readonly sources: readonly string[]
  /** Of the rates; `read` names the fields that were read. */
  readonly provenance: Provenance
  readonly read?: readonly string[]
  readonly note: string
}

const all = list as readonly AlgaeKind[]
const byKey = new Map(all.map((kind) => [kind.key, kind]))

/** All kinds, films first, crusts last. */
export const algaeKinds = (): readonly AlgaeKind[] => all

/**
 * The kind of a key, such as hair_green.
 * @throws UnknownKey with the nearest keys
 */
export function algaeKind(key: string): AlgaeKind {
  const found = byKey.get(key)
  if (found === undefined) throw new UnknownKey('unknown-algae-kind', 'Kind of algae', key, byKey.keys())
  return found
}
