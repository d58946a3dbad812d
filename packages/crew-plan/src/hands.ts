import type { PlaceWeek } from '@holdfast/ecosystem'
import type { FactsOfSystem } from '@holdfast/facts'
import type { HandWork } from './answer.ts'
import type { Band } from './band.ts'

/** What the hand takes off a kind on a surface once a week: a share of what stands there, in all its patches. */
export interface Weekly {
  readonly surface: string
  readonly kind: string
  /** 0 to 1. */
  readonly share: number
}

/** A place with its stand, and how much of it the hand is to take, g dry d⁻¹. */
export interface Taken
  extends Pick<PlaceWeek, 'surface' | 'patch' | 'kind' | 'mass_g' | 'cover' | 'height_mm'> {
  readonly byHand_g_d: number
}

/** Cover that may stand at a place, 0 to 1. */
export type Minded = (place: Pick<PlaceWeek, 'surface' | 'patch' | 'kind' | 'height_mm'>) => number

/**
 * The share that the hand takes each week so that a stand stays where nobody minds it: a week's growth out of what
 * may stand and that growth. Of several patches the one that needs most decides, for a hand does not tell them apart.
 */
export function weeklyOf(
  taken: readonly Taken[],
  minded: Minded,
  { typical }: FactsOfSystem,
): readonly Weekly[] {
  const thorough = typical('crew_plan.thorough')
  return largest(
    taken.map((place) => {
      const { surface, kind, mass_g, cover, byHand_g_d } = place
      const mayStand_g = cover > 0 ? (mass_g * minded(place)) / cover : 0
      const grown_g = 7 * byHand_g_d
      return { surface, kind, share: Math.min(thorough, grown_g / (mayStand_g + grown_g)) }
    }),
  )
}

/** The same hands, cutting so much deeper where a stand is not held as would have it held that week. */
export function deeper(
  hands: readonly Weekly[],
  loose: readonly Pick<PlaceWeek, 'surface' | 'patch' | 'kind' | 'cover' | 'height_mm'>[],
  minded: Minded,
  { typical }: FactsOfSystem,
): readonly Weekly[] {
  const cut = loose.map((place) => {
    const { surface, kind, cover } = place
    const before = hands.find((one) => one.surface === surface && one.kind === kind)?.share ?? 0
    const share = 1 - (1 - before) * (minded(place) / cover)
    return { surface, kind, share: Math.min(typical('crew_plan.thorough'), share) }
  })
  return largest([...hands, ...cut])
}

/** A stand with the interval of its mass. */
export interface Measured extends PlaceWeek {
  readonly mass_band_g: Band
}

/** What such hands take of the stands that are there, week by week. */
export const takenBy = (hands: readonly Weekly[], stands: readonly Measured[]): readonly HandWork[] =>
  hands.flatMap(({ surface, kind, share }) =>
    stands
      .filter((stand) => stand.surface === surface && stand.kind === kind)
      .map(({ patch, mass_g, mass_band_g: { low, value, high } }) => ({
        ...{ surface, patch, kind, grams_dry_per_week: share * mass_g },
        band: { low: share * low, value: share * value, high: share * high },
      })),
  )

/** Of each kind on each surface the largest share. */
export function largest(all: readonly Weekly[]): readonly Weekly[] {
  const found = new Map<string, Weekly>()
  for (const weekly of all) {
    const key = `${weekly.surface} ${weekly.kind}`
    if (weekly.share > (found.get(key)?.share ?? 0)) found.set(key, weekly)
  }
  return [...found.values()]
}
