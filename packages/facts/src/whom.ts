import { finned, type Grazer } from './grazer.ts'

/**
 * Whom a row of neighbours or of pair rules is about, as the tables write it: a taxon, a group of grazers,
 * 'genus:Naso', 'hazard:topples_frags', 'all:animals' or 'all:invertebrates'; 'snail[<2cm]' is of those under 2 cm.
 */
export interface Whom {
  /** What it goes by, the finest last. */
  readonly by: (typeof fineness)[number]
  readonly name: string
  readonly below_cm?: number
}

const fineness = ['all', 'hazard', 'group', 'genus', 'taxon'] as const

export function whom(text: string): Whom {
  const [, name = text, size] = /^(.*?)(?:\[<([\d.]+)cm\])?$/.exec(text) ?? []
  const limit = size === undefined ? {} : { below_cm: Number(size) }
  const [word, rest] = name.split(':', 2)
  if (rest !== undefined && (word === 'genus' || word === 'hazard' || word === 'all'))
    return { by: word, name: rest, ...limit }
  // A taxon begins with a capital, a group never does.
  return { by: /^[A-Z]/.test(name) ? 'taxon' : 'group', name, ...limit }
}

/** How closely it is told: the larger wins over the smaller. */
export const finenessOf = ({ by }: Whom): number => fineness.indexOf(by)

/** Limits of size are no cliffs: from three tenths under to three tenths over, a share falls in a line. */
const edge = 0.3

/**
 * Share of the animals of a taxon that are meant, 0 to 1.
 * @param size_cm  of the animals; without it as the catalogue has them grown
 */
export function meant(who: Whom, animal: Grazer, size_cm = animal.adultSize_cm): number {
  if (!goesBy(who, animal)) return 0
  if (who.below_cm === undefined) return 1
  const over = size_cm / who.below_cm - 1
  return Math.min(1, Math.max(0, 0.5 - over / (2 * edge)))
}

function goesBy({ by, name }: Whom, { taxon, like = taxon, group, hazards }: Grazer): boolean {
  switch (by) {
    case 'taxon':
      return like === name
    case 'genus':
      return like.startsWith(`${name} `)
    case 'group':
      return group === name
    case 'hazard':
      return hazards.includes(name)
    case 'all':
      return name === 'animals' || !finned(group)
  }
}
