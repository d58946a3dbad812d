import { crewOf, livingOf, type PlaceWeek, reaches, stateIndex, weekOf } from '@holdfast/ecosystem'
import { grazer } from '@holdfast/facts'
import { middle } from './middle.ts'
import type { Present } from './question.ts'

/** A kind of alga on a part of a surface over the coming week: what grows, who gets there, who eats of it. */
export interface ReachedPlace {
  readonly surface: string
  readonly patch: PlaceWeek['patch']
  readonly kind: string
  /** Share of that part that it covers today. */
  readonly cover: number
  readonly grows_g_week: number
  /** By those that eat of it, the largest first; g dry. */
  readonly eaten: readonly { readonly taxon: string; readonly tradeName: string; readonly g_week: number }[]
  /** What grows and is not eaten; never below nothing. */
  readonly left_g_week: number
  /** Taxa of the crew alive that get there at all, whether they like it or not. */
  readonly reachedBy: readonly string[]
}

/** Where the crew of today gets, and what it leaves, in the coming week with husbandry unchanged; medians over the worlds. */
export function reached(present: Present): readonly ReachedPlace[] {
  const { model, day, worlds, routine } = present
  const { system, facts } = model
  const moments = routine(day + 7)
  const weeks = worlds.map((world) => weekOf({ model, world, from: day, to: day + 7, moments }))
  const crew = crewOf(system).filter(({ taxon }) => {
    const living = stateIndex(model, livingOf(taxon).id)
    return middle(present, (w) => worlds[w].states[living]) >= 0.5
  })
  return weeks[0].map(({ surface, patch, kind }, p): ReachedPlace => {
    const median = (of: (place: PlaceWeek) => number): number => middle(present, (w) => of(weeks[w][p]))
    const where = system.surfaces.find(({ id }) => id === surface)
    const eaten = crew
      .map(({ taxon }) => ({
        taxon,
        tradeName: grazer(taxon)?.tradeName ?? taxon,
        g_week: 7 * median(({ grazed_g_d }) => grazed_g_d.get(taxon) ?? 0),
      }))
      .filter(({ g_week }) => g_week > 0)
      .sort((a, b) => b.g_week - a.g_week)
    const grazed = ({ grazed_g_d }: PlaceWeek): number =>
      [...grazed_g_d.values()].reduce((sum, one) => sum + one, 0)
    return {
      surface,
      patch,
      kind,
      cover: median(({ cover }) => cover),
      grows_g_week: 7 * median(({ growth_g_d }) => growth_g_d),
      eaten,
      left_g_week: 7 * median((place) => Math.max(0, place.growth_g_d - grazed(place))),
      reachedBy: crew
        .filter(({ taxon, animals }) => where && reaches(where, taxon, patch, animals.adult_size_cm, facts))
        .map(({ taxon }) => taxon),
    }
  })
}
