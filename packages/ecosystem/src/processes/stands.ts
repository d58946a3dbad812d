import { algaeKind, type FactsOfSystem, patchShares } from '@holdfast/facts'
import {
  type Patch,
  patches,
  type Stand,
  standAccount,
  standCover,
  storesAccount,
} from '../accounts/index.ts'
import type { Account, PlainState } from '../declare/index.ts'
import { amount, fact, gathered, move, setting } from '../declare/index.ts'
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

export const ofKind =
  (name: string) =>
  (growing: Growing): string =>
    `algae.${growing.stand.kind}.${name}`

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

/** Whether the cover of a kind is a thing of its own, that spreads, is eaten away and is overgrown. */
export const spreads = (kind: string): boolean => growthForm(kind) === 'tufted'

/** The cover of a stand where it is a thing of its own: what takes the mass of a film or crust takes its cover with it. */
export const ownCover = ({ stand }: Growing): PlainState | undefined =>
  spreads(stand.kind) ? standCover(stand) : undefined

/** Keys of what is summed over the stands of a patch, over those of a kind in a vessel, or meant for one stand. */
export const patchKey = ({ stand }: Growing): string => `${stand.surface} ${stand.patch}`
export const storesKey = ({ stand, surface }: Growing): string => `${surface.vessel} ${stand.kind}`
export const standKey = ({ stand }: Growing): string => `${stand.surface} ${stand.patch} ${stand.kind}`

/** What all stands of the kind in the vessel have stored. */
export const stores = ({ stand, surface }: Growing): Account => storesAccount(surface.vessel, stand.kind)

/** Mass and area of a stand. */
export const standing = {
  carbon: amount<Growing>(({ stand }) => standAccount(stand), 'C'),
  area: setting<Growing>(
    ({ stand }) => `area ${stand.surface} ${stand.patch}`,
    'm²',
    ({ surface, stand }, facts) => surface.area_m2 * patchShare(surface, stand.patch, facts),
  ),
}

/** How a stand covers its ground, as its growth tells all others. */
export const covering = {
  cover: gathered<Growing>('cover', standKey, '1'),
  thickness: gathered<Growing>('thickness', standKey, '1'),
}

/** What all stands of the kind in the vessel have stored, and their carbon together. */
export const stored = {
  reads: {
    nitrogen: amount<Growing>(stores, 'N'),
    phosphorus: amount<Growing>(stores, 'P'),
    tissue: gathered<Growing>('tissue', storesKey, 'µmol'),
  },
  terms: {
    richN: { is: 'part(nitrogen, tissue)', unit: '1' },
    richP: { is: 'part(phosphorus, tissue)', unit: '1' },
  },
} as const

/** The accounts that a stand loses atoms from, and the amounts of each that go with the rate of its carbon. */
export const tissueOf = {
  C: { from: ({ stand }: Growing): Account => standAccount(stand), amount: 'carbon' },
  N: { from: stores, amount: 'carbon * richN' },
  P: { from: stores, amount: 'carbon * richP' },
} as const

/** A share of a stand leaves, and of the stores what goes with it. */
export const leaves = (to: Account, rate: string) =>
  (['N', 'P', 'C'] as const).map((atom) =>
    move<Growing>({ atom, from: tissueOf[atom].from, to, rate: `(${rate}) * ${tissueOf[atom].amount}` }),
  )

export const standFacts = {
  carbonContent: fact<Growing>(ofKind('tissue_C'), 'µmol g⁻¹'),
  fullMass: fact<Growing>(ofKind('full_cover_mass'), 'g m⁻²'),
}

/** Dry mass of a stand, and the ground that it covers. A bare patch has no thickness to speak of. */
export const standTerms = {
  mass: { is: 'carbon / carbonContent', unit: 'g' },
  covered: { is: 'area * most(cover, 0.000001)', unit: 'm²' },
}
