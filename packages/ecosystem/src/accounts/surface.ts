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

const idOf = (stand: Stand) => `surface.${stand.surface}.${stand.kind}.${stand.patch}`

/** Whether an account is that of a stand: one may hold next to nothing and yet bloom. */
export const isStand = ({ id }: Account): boolean => id.startsWith('surface.')

/** The atoms of a stand. */
export const standAccount = (stand: Stand): Account =>
  account('inside', idOf(stand), `${stand.kind} on ${stand.surface}, ${stand.patch}`, ['N', 'P', 'C'])

/** The share of its patch that a stand covers. */
export const standCover = (stand: Stand): PlainState => ({
  id: `cover.${stand.surface}.${stand.kind}.${stand.patch}`,
  title: `Cover of ${stand.kind} on ${stand.surface}, ${stand.patch}`,
  unit: '1',
})
