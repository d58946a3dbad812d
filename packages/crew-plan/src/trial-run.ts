import {
  assemble,
  carriedOver,
  crewOf,
  type Event,
  hungerOf,
  livingOf,
  type PlaceWeek,
  placeKey,
  placesBetween,
  simulate,
  stateIndex,
  timeline,
} from '@holdfast/ecosystem'
import { middle } from './middle.ts'
import type { Present } from './question.ts'

/** Animals that come or go on a day. */
export interface Change {
  readonly day: number
  readonly taxon: string
  /** Below nothing for those that are given away. */
  readonly count: number
}

/** What becomes of a crew: medians over the worlds. */
export interface TrialRun {
  /** The stands three months on. */
  readonly held: readonly PlaceWeek[]
  /** Growth in the second half of a lean year, g dry d⁻¹, by the key of the place. */
  readonly lean: ReadonlyMap<string, number>
  readonly crew: readonly Fate[]
}

/** What becomes of the animals of a taxon within a year. */
export interface Fate {
  readonly taxon: string
  /** Most of its reserve that it has used up, 0 to 1; from a half on animals begin to be lost to hunger. */
  readonly hunger: number
  /** The same at the end of each month of thirty days. */
  readonly months: readonly number[]
  readonly livingAfterYear: number
}

const held = 90
const year = 365

/** Lets a crew live in the model: three months to see what is held, a year to see who starves. */
export function trialRun(present: Present, changes: readonly Change[]): TrialRun {
  const { day, worlds, routine } = present
  const known = new Set(crewOf(present.model.system).map(({ taxon }) => taxon))
  const comers = [...new Set(changes.map(({ taxon }) => taxon))].filter((taxon) => !known.has(taxon))
  const system = {
    ...present.model.system,
    animals: [
      ...present.model.system.animals,
      ...comers.map((taxon) => ({ kind: taxon, taxon, count: 0, role: 'grazer' as const })),
    ],
  }
  const model = assemble(system, present.model.facts)
  const to = day + year + 1
  const events = changes.map(
    ({ day: on, taxon, count }): Event =>
      count > 0
        ? { day: on, kind: 'animals added', taxon, count }
        : { day: on, kind: 'animals lost', taxon, count: -count, bodyTakenOut: true },
  )
  const arrivals = timeline({
    system: { ...system, equipment: [] },
    facts: model.facts,
    events,
    from: day,
    to,
    asOf: day,
  })
  const moments = [...routine(to), ...arrivals].sort((a, b) => a.day - b.day)
  const days = Array.from({ length: 12 }, (_, k) => day + 30 + 30 * k)
  const runs = worlds.map((world) => {
    const carried = carriedOver(present.model, world, model)
    const { marks, samples } = simulate({
      model,
      parameters: carried.parameters,
      start: carried.states,
      settings: carried.settings,
      from: day,
      to,
      timeline: moments,
      samples: days,
      marks: [day + held - 7, day + held, day + 180, day + year],
    })
    return {
      held: placesBetween(model, carried, marks[0], marks[1]),
      lean: placesBetween(model, carried, marks[2], marks[3]),
      samples,
    }
  })
  const median = (of: (run: (typeof runs)[number]) => number): number => middle(present, (w) => of(runs[w]))
  return {
    held: runs[0].held.map((place, p) => ({
      ...place,
      cover: median((run) => run.held[p].cover),
      growth_g_d: median((run) => run.held[p].growth_g_d),
    })),
    lean: new Map(
      runs[0].lean.map((place, p) => [placeKey(place), median((run) => Math.max(0, run.lean[p].growth_g_d))]),
    ),
    crew: crewOf(system).map(({ taxon }) => {
      const hunger = stateIndex(model, hungerOf(taxon).id)
      const living = stateIndex(model, livingOf(taxon).id)
      return {
        taxon,
        hunger: median(({ samples }) => Math.max(...samples.map((states) => states[hunger]))),
        months: days.map((_, k) => median(({ samples }) => samples[k][hunger])),
        livingAfterYear: median(({ samples }) => samples[samples.length - 1][living]),
      }
    }),
  }
}
