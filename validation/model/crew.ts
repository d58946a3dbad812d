/** Surfaces and crew of a case, by the model and the plan that is made with it. */
import {
  crewPlan,
  homeOf,
  loadSolver,
  mostOf,
  type Present,
  presentOfPast,
  trialRun,
} from '@holdfast/crew-plan'
import {
  crewOf,
  grazingCapacity,
  livingOf,
  type PlaceWeek,
  patches,
  stateIndex,
  weekOf,
} from '@holdfast/ecosystem'
import { grazer, wantedKind } from '@holdfast/facts'
import type { CaseFile } from '../case-file.ts'
import type { ProposedCrew } from '../model-answers.ts'
import { median, resampled } from './courses.ts'
import { keyOf, presentForCrew, presentOf } from './past-of-case.ts'

const solver = await loadSolver()

/** Reserve used up from which animals are lost to hunger. */
const starving = 0.5

function presentIn(file: CaseFile): Present {
  const { known, question } = presentOf(file)
  return presentOfPast(known, question)
}

const mean = ({ worlds, weights }: Present, of: (world: Present['worlds'][number]) => number): number =>
  worlds.reduce((sum, world, w) => sum + weights[w] * of(world), 0)

export function ungrazed(file: CaseFile): ReadonlyMap<string, number> {
  const { known, question } = presentOf(file)
  const few = resampled(known)
  const { model, day, worlds, routine } = presentOfPast(few, question, few.members.length)
  const moments = routine(day + 7)
  const each = worlds.map((world) =>
    weekOf({ model, world, from: day, to: day + 7, moments }).filter(({ kind }) => !wantedKind(kind)),
  )
  const left = (places: readonly PlaceWeek[], surface: string): number =>
    places
      .filter((place) => place.surface === surface)
      .reduce((sum, { growth_g_d, grazed_g_d }) => {
        const eaten = [...grazed_g_d.values()].reduce((all, one) => all + one, 0)
        return sum + Math.max(0, growth_g_d - eaten)
      }, 0)
  return new Map(
    model.system.surfaces.map(({ id }) => [
      id,
      median(
        each.map((places) => left(places, id)),
        few.weights.of,
      ),
    ]),
  )
}

export function grazingCapacityAt(file: CaseFile, surfaceId: string): number {
  const present = presentIn(file)
  const { system, facts } = present.model
  const surface = system.surfaces.find(({ id }) => id === surfaceId)
  if (!surface) return Number.NaN
  const kinds = [...new Set(system.algae.map(({ kind }) => kind))]
  return crewOf(system, facts).reduce((sum, { taxon, animals }) => {
    const each = patches.flatMap((patch) =>
      kinds.map((kind) =>
        grazingCapacity(taxon, { surface, patch, kind }, system, facts, animals.adult_size_cm),
      ),
    )
    return sum + 1000 * livingIn(present, taxon) * Math.max(0, ...each)
  }, 0)
}

const livingIn = (present: Present, taxon: string): number => {
  const index = stateIndex(present.model, livingOf(taxon).id)
  return mean(present, ({ states }) => states[index])
}

const plans = new Map<string, ProposedCrew>()

/** The plan of the keeper who has told no wishes: animals that ask for caution stay out. */
export function proposedCrew(file: CaseFile): ProposedCrew {
  const key = keyOf(file)
  const known = plans.get(key)
  if (known) return known
  const made = planFor(file)
  plans.set(key, made)
  return made
}

function planFor(file: CaseFile): ProposedCrew {
  const { known, question } = presentForCrew(file)
  const present = presentOfPast(known, question)
  const answer = crewPlan({ present, wishes: {} }, solver)
  if (answer.status !== 'plan') return { crew: new Map(), firstStep: new Map(), hungryWithin: () => false }
  const [first] = answer.steps
  return {
    crew: new Map(answer.crew.map(({ taxon, there, come, leave }) => [taxon, there + come - leave])),
    firstStep: new Map((first?.animals ?? []).map(({ taxon, count }) => [taxon, count])),
    hungryWithin: (days) => starve(answer.check.crew, days),
  }
}

const starve = (crew: readonly { readonly months: readonly number[] }[], days: number): boolean =>
  crew.some(({ months }) =>
    months.slice(0, Math.max(1, Math.round(days / 30))).some((used) => used > starving),
  )

export const hungry = (file: CaseFile, days: number): boolean =>
  starve(trialRun(presentIn(file), []).crew, days)

export function mostOfCrew(file: CaseFile, taxa: readonly string[]): number {
  const { system, facts } = presentIn(file).model
  const home = homeOf(system)
  const fits = taxa.flatMap((taxon) => {
    const animal = grazer(taxon)
    return animal &&
      animal.reefSafe !== 'no' &&
      (home.glass_volume_L ?? home.volume_L) >= animal.volume_L.least
      ? [mostOf(animal, system, home, facts)]
      : []
  })
  return Math.max(0, ...fits)
}
