import { algaeKind } from '@holdfast/facts'
import { named } from '@holdfast/facts/names'
import type { PlaceReach } from '@holdfast/reach'

const patchWords: Readonly<Record<PlaceReach['patch'], string>> = {
  open: 'in the open',
  half_hidden: 'half hidden',
  hidden: 'hidden',
}

export const patchName = (patch: PlaceReach['patch']): string => patchWords[patch]

/** A patch as it is called on the page: "rock face, half hidden". */
export const placeName = ({ surface, patch }: Pick<PlaceReach, 'surface' | 'patch'>): string =>
  `${named(surface)}, ${patchWords[patch]}`

export const kindName = (kind: string): string => algaeKind(kind).title

const metWords: Readonly<Record<Exclude<PlaceReach['met'], 'eaten'>, string>> = {
  'not reached': 'nobody gets there',
  'not eaten': 'nobody there eats it',
}

/** Who eats at a place, or why nobody does. */
export function byWhom({ met, eaten }: PlaceReach, names: ReadonlyMap<string, string>): string {
  if (met !== 'eaten') return metWords[met]
  if (eaten.length === 0) return 'nobody this week'
  return eaten.map(({ taxon }) => names.get(taxon) ?? taxon).join(', ')
}
