import type { PatchKey } from '@holdfast/facts'
import { type Account, account, type PlainState } from '../declare/account.ts'

/** Parts of a surface by how easily a mouth gets there; what none reaches seeds the rest. */
export const patches: readonly Patch[] = ['open', 'half_hidden', 'hidden']
export type Patch = PatchKey

/** One kind of alga on one patch of one surface. */
export interface Stand {
  readonly surface: string
  readonly kind: string
  readonly patch: Patch
}

/** Whether an account is that of algae on surfaces: one may hold next to nothing and yet bloom. */
export const isOfStands = ({ id }: Account): boolean => id.startsWith('surface.')

/** The carbon of a stand: its mass. */
export const standAccount = ({ surface, kind, patch }: Stand): Account =>
  account('inside', `surface.${surface}.${kind}.${patch}`, `${kind} on ${surface}, ${patch}`, ['C'])

/** What all stands of a kind in a vessel have stored: they drink the same water. */
export const storesAccount = (vessel: string, kind: string): Account =>
  account('inside', `surface.${vessel}.${kind}`, `Stores of ${kind} in the ${vessel}`, ['N', 'P'])

/** The share of its patch that a stand of a tufted kind covers; that of films and crusts follows from their mass. */
export const standCover = (stand: Stand): PlainState => ({
  id: `cover.${stand.surface}.${stand.kind}.${stand.patch}`,
  title: `Cover of ${stand.kind} on ${stand.surface}, ${stand.patch}`,
  unit: '1',
})
