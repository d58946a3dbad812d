import type { BandOver, Present } from '@holdfast/crew-plan'
import type { PlaceWeek, Surface } from '@holdfast/ecosystem'
import { surfaceKind } from '@holdfast/facts'
import type { Exposed, GrazerReach, PlaceReach } from './answer.ts'
import { deedsFor } from './deeds.ts'
import { leftAt, patchOf } from './left.ts'
import { rhythmOf } from './rhythm.ts'

interface Looked {
  /** In the order of the weeks of each world. */
  readonly places: readonly PlaceReach[]
  readonly weeks: readonly (readonly PlaceWeek[])[]
  readonly grazers: readonly GrazerReach[]
  readonly present: Present
  readonly band: BandOver
}

const most = 3
/** A patch on which less than this share of all growth is left is no place to speak of. */
const nothing = 0.003

/** The patches where most is left on a square metre and no hand is told to clean often enough, and what to do there. */
export function exposedOf({ places, weeks, grazers, present, band }: Looked): readonly Exposed[] {
  const { system } = present.model
  const grown = sum(places.map(({ growth_g_week }) => growth_g_week.value))
  const unwanted = places.map((place, p) => ({ ...place, p })).filter(({ wanted }) => !wanted)
  return [...new Set(unwanted.map(patchOf))]
    .flatMap((patch) => {
      const kinds = unwanted.filter((place) => patchOf(place) === patch)
      const [worst] = kinds.toSorted((a, b) => b.left_g_week.value - a.left_g_week.value)
      const surface = system.surfaces.find(({ id }) => id === worst?.surface)
      if (!worst || !surface || worst.left_g_week.value <= nothing * grown) return []
      const left_g_week = band((w) => sum(kinds.map(({ p }) => leftAt(weeks[w][p]))))
      return isCleaned(surface, worst, present) ? [] : [{ worst, surface, left_g_week }]
    })
    .sort((a, b) => b.left_g_week.value / b.worst.area_m2 - a.left_g_week.value / a.worst.area_m2)
    .slice(0, most)
    .map(({ worst, surface, left_g_week }) => ({
      surface: worst.surface,
      patch: worst.patch,
      kind: worst.kind,
      left_g_week,
      why: whyOf(worst, grazers),
      deeds: deedsFor(worst, surface, grazers, present),
    }))
}

/** Whether the keeper cleans here as often as it takes. */
const isCleaned = (surface: Surface, place: PlaceReach, { model }: Present): boolean =>
  surface.hand_cleaned_every_days !== undefined &&
  surfaceKind(surface.kind).handReaches.includes(place.patch) &&
  surface.hand_cleaned_every_days <= rhythmOf(place, model.facts)

function whyOf({ met, eaten }: PlaceReach, grazers: readonly GrazerReach[]): string {
  if (grazers.length === 0) return 'No grazer lives in this system.'
  if (met === 'not reached') return 'None of your animals gets there.'
  if (met === 'not eaten') return 'Some of your animals get there, and none of them eats it.'
  const names = grazers.filter(({ taxon }) => eaten.some((one) => one.taxon === taxon))
  return names.length === 0
    ? 'Some of your animals could eat it, and find what they like better elsewhere.'
    : `What eats there does not keep up with it: ${names.map(({ tradeName }) => tradeName).join(', ')}.`
}

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0)
