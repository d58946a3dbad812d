import {
  crewOf,
  type Intake,
  intakes,
  livesAt,
  livingOf,
  type PlaceWeek,
  placeKey,
  placesBetween,
  simulate,
  stateIndex,
} from '@holdfast/ecosystem'
import { middle } from './middle.ts'
import type { Present } from './question.ts'

/** A place where something grows that should be held, as the plan sees it. */
export interface Place {
  readonly key: string
  readonly surface: string
  readonly patch: PlaceWeek['patch']
  readonly kind: string
  readonly growth_g_d: number
  readonly mass_g: number
  readonly cover: number
  readonly height_mm: number
}

/** What a plan needs to know of today: what grows where, and what one animal of each taxon would eat of it. */
export interface Demand {
  readonly places: readonly Place[]
  readonly intakes: ReadonlyMap<string, Intake>
  /** Of the crew that is at home there, how many live, whole animals by taxon. */
  readonly living: ReadonlyMap<string, number>
}

/** Days of the two weeks that are looked at: the coming one, and one when what is only beginning has grown in. */
const weeks = [
  [0, 7],
  [49, 56],
] as const

/**
 * The larger growth of the coming week and of the week two months on with husbandry unchanged, and the larger
 * intakes; medians over the worlds that the system may be. A film that has only begun is no film to plan for.
 *
 * @param home  vessel that the crew is for
 */
export function demandOf(present: Present, taxa: readonly string[], home: string): Demand {
  const { model, day, worlds, routine } = present
  const moments = routine(day + weeks[1][1])
  const looks = worlds.map((world) => {
    const { marks } = simulate({
      model,
      parameters: world.parameters,
      start: world.states,
      settings: world.settings,
      from: day,
      to: day + weeks[1][1],
      timeline: moments,
      marks: weeks.flat().map((after) => day + after),
    })
    return weeks.map((_, w) => {
      const [first, last] = [marks[2 * w], marks[2 * w + 1]]
      const places = placesBetween(model, world, first, last)
      const then = { ...world, states: first.states }
      return {
        places,
        intakes: new Map(intakes(model, then, taxa, places, home).map((one) => [one.taxon, one])),
      }
    })
  })
  const largest = (world: number, of: (look: (typeof looks)[number][number]) => number): number =>
    Math.max(0, ...looks[world].map(of))
  const places = (looks[0]?.[0].places ?? []).map((place, p): Place => {
    const { surface, patch, kind } = place
    return {
      key: placeKey(place),
      surface,
      patch,
      kind,
      growth_g_d: middle(present, (w) => largest(w, (look) => look.places[p].growth_g_d)),
      mass_g: middle(present, (w) => looks[w][0].places[p].mass_g),
      cover: middle(present, (w) => looks[w][0].places[p].cover),
      height_mm: middle(present, (w) => looks[w][0].places[p].height_mm),
    }
  })
  const of = (taxon: string, what: 'appetite_g_d' | 'algae_g_d' | 'detritus_g_d'): number =>
    middle(present, (w) => largest(w, (look) => look.intakes.get(taxon)?.[what] ?? 0))
  const here = crewOf(model.system, model.facts).filter(({ taxon }) =>
    livesAt(model.system, taxon, { vessel: home }),
  )
  const living = here.map(({ taxon }) => {
    const index = stateIndex(model, livingOf(taxon).id)
    return [taxon, Math.round(middle(present, (w) => worlds[w].states[index]))] as const
  })
  return {
    places,
    living: new Map(living),
    intakes: new Map(
      taxa.map((taxon) => [
        taxon,
        {
          taxon,
          appetite_g_d: of(taxon, 'appetite_g_d'),
          algae_g_d: of(taxon, 'algae_g_d'),
          detritus_g_d: of(taxon, 'detritus_g_d'),
        },
      ]),
    ),
  }
}
