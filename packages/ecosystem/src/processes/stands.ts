import { algaeKind, type FactsOfSystem, patchShares } from '@holdfast/facts'
import { type Patch, patches, type Stand, standAccount, standCover } from '../accounts/index.ts'
import { amount, fact, setting, state } from '../declare/index.ts'
import type { Surface, System } from '../system.ts'
import type { InSystem } from './readings.ts'

/** A stand of one alga on one patch, with the surface it grows on. */
export interface Growing extends InSystem {
  readonly stand: Stand
  readonly surface: Surface
}

/** Every stand of the system: a kind that is present anywhere may stand on any surface. */
export function standsOf(system: System): readonly Growing[] {
  const kinds = [...new Set(system.algae.map(({ kind }) => kind))]
  return system.surfaces.flatMap((surface) =>
    kinds.flatMap((kind) =>
      patches.map((patch) => ({ system, surface, stand: { surface: surface.id, kind, patch } })),
    ),
  )
}

export const namedStands = (system: System) =>
  standsOf(system).map((of) => ({ name: `${of.stand.kind} on ${of.stand.surface}, ${of.stand.patch}`, of }))

/** Share of a surface that a patch is. */
export const patchShare = ({ kind }: Surface, patch: Patch, { typical }: FactsOfSystem): number =>
  patchShares(kind, typical)[patch]

export const lightSetting = (surface: string): string => `light ${surface}`
export const hoursSetting = (surface: string): string => `light hours ${surface}`

const ofKind =
  (name: string) =>
  (growing: Growing): string =>
    `algae.${growing.stand.kind}.${name}`

export const spreadsOf = ({ stand }: Growing): number => (growthForm(stand.kind) === 'tufted' ? 1 : 0)

/**
 * 1 where the cover of a stand is a thing of its own, that spreads, is eaten away and is overgrown; 0 where it
 * follows from the mass. What takes the mass of a film or crust takes its cover with it, and nothing does so twice.
 */
export const spreads = setting<Growing>(({ stand }) => `${stand.kind} spreads`, '1', spreadsOf)

/** What every formula about a stand reads. */
export const standing = {
  carbon: amount<Growing>(({ stand }) => standAccount(stand), 'C'),
  cover: state<Growing>(({ stand }) => standCover(stand), '1'),
  area: setting<Growing>(
    ({ stand }) => `area ${stand.surface} ${stand.patch}`,
    'm²',
    ({ surface, stand }, facts) => surface.area_m2 * patchShare(surface, stand.patch, facts),
  ),
}

export const standFacts = {
  carbonContent: fact<Growing>(ofKind('tissue_C'), 'µmol g⁻¹'),
  fullMass: fact<Growing>(ofKind('full_cover_mass'), 'g m⁻²'),
}

/** Dry mass of the stand; its thickness relative to a full stand. A bare patch has no thickness to speak of. */
export const standTerms = {
  mass: { is: 'carbon / carbonContent', unit: 'g' },
  covered: { is: 'area * most(cover, 0.000001)', unit: 'm²' },
  thickness: { is: 'mass / (covered * fullMass)', unit: '1' },
}

export { ofKind }

/** How a kind covers ground: a film or a crust by its mass, a tufted kind by spreading and then thickening. */
export type GrowthForm = 'film' | 'tufted' | 'crust'

const films = new Set(['film', 'mat', 'loose mat with strings', 'slime mat'])
const crusts = new Set(['crust', 'crust with lobes'])

export function growthForm(kind: string): GrowthForm {
  const { form } = algaeKind(kind)
  if (films.has(form)) return 'film'
  return crusts.has(form) ? 'crust' : 'tufted'
}

/** Crusts are the ground of a patch; films and tufts stand on it or beside it, and have one layer together. */
export const layerOf = (kind: string): 'crust' | 'upright' =>
  growthForm(kind) === 'crust' ? 'crust' : 'upright'

/** Keys of what is summed over the stands of a patch, or meant for one stand. */
export const patchKey = ({ stand }: Growing): string => `${stand.surface} ${stand.patch}`
export const standKey = (stand: Stand): string => `${stand.surface} ${stand.patch} ${stand.kind}`
