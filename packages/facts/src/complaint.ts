import table from './data/complaints.json' with { type: 'json' }

/** Where the shares of kinds among complaints come from. */
export const complaintsKnownBy = {
  source: table.source,
  provenance: table.provenance,
  note: table.note,
} as const

const frequencies = table.frequencies as Readonly<Record<string, Readonly<Record<string, number>>>>

/**
 * Share of a kind among what keepers complain of in systems of an age, 0 to 1.
 *
 * @param age  a state of the trait age_of_system; without it the mean of all ages
 */
export function complaintShare(kind: string, age?: string): number {
  const byAge = frequencies[kind] ?? {}
  const known = age === undefined ? undefined : byAge[age]
  if (known !== undefined) return known
  const shares = Object.values(byAge)
  return shares.reduce((sum, share) => sum + share, 0) / Math.max(1, shares.length)
}
