import { algaeKind, catalogueAlone } from '@holdfast/facts'
import type { OutlookQuestion } from '@holdfast/inference'

/** What grows on every lit surface whether or not anybody writes it down: a film and a turf. */
const everywhere = ['film_green', 'turf'] as const

/** Of these the kinds that neither description nor log tell of: a keeper writes down what is a nuisance. */
export function untold({ system, observations }: OutlookQuestion): readonly string[] {
  const told = [
    ...system.algae.map(({ kind }) => kind),
    ...observations.flatMap(({ algae }) => (algae === undefined ? [] : [algae])),
  ]
  const forms = told.map((kind) => algaeKind(kind).form)
  return everywhere.filter((kind) => !forms.includes(algaeKind(kind).form))
}

/**
 * The question with films and turf on all lit surfaces, where nobody tells of any: what a crew lives on when the
 * nuisance is gone. Without them a plan against one nuisance would starve every grazer that holds it.
 */
export function withEverPresent(question: OutlookQuestion): OutlookQuestion {
  const kinds = untold(question)
  if (kinds.length === 0) return question
  const cover = catalogueAlone.typical('crew_plan.untold_cover')
  const { system } = question
  const added = kinds.flatMap((kind) =>
    system.surfaces
      .filter(({ light_umol_m2_s, light_h_per_day }) => light_umol_m2_s * light_h_per_day > 0)
      .map(({ id }) => ({ kind, surface: id, cover })),
  )
  return { ...question, system: { ...system, algae: [...system.algae, ...added] } }
}
