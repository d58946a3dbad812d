import { algaeKind, type FactsOfSystem } from '@holdfast/facts'
import type { PlaceReach } from './answer.ts'

/** Rhythms that a keeper holds, days. */
const rhythms = [2, 3, 4, 7, 14, 28] as const
export const longest = 28
export type Rhythm = (typeof rhythms)[number]

/** How often a hand has to clean a patch: the longest of the usual rhythms in which no more grows than keepers mind, days. */
export function rhythmOf(place: PlaceReach, facts: FactsOfSystem): Rhythm {
  const days = mayStand_g(place, facts) / leftADay(place)
  return rhythms.findLast((each) => each <= days) ?? rhythms[0]
}

/** In how many days more stands on a patch than keepers mind, where it goes on growing by the same share a day. */
export function daysUntilMinded(place: PlaceReach, facts: FactsOfSystem): number {
  const { mass_g } = place
  const most = mayStand_g(place, facts)
  return mass_g >= most ? 0 : (Math.log(most / mass_g) * mass_g) / leftADay(place)
}

/** Dry algae on a patch that keepers do not mind, g. */
function mayStand_g({ kind, area_m2, height_mm }: PlaceReach, { typical }: FactsOfSystem): number {
  const cover = typical(height_mm <= typical('crew_plan.short') ? 'crew_plan.held_short' : 'crew_plan.held')
  return cover * algaeKind(kind).fullCoverMass.typical * area_m2
}

const leftADay = ({ left_g_week }: PlaceReach): number => Math.max(left_g_week.value / 7, 1e-9)

const words: Readonly<Record<Rhythm, string>> = {
  2: 'every second day',
  3: 'every three days',
  4: 'every four days',
  7: 'once a week',
  14: 'every two weeks',
  28: 'every four weeks',
}

export const rhythmInWords = (rhythm: Rhythm): string => words[rhythm]
