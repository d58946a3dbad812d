import {
  assemble,
  carriedOver,
  crewOf,
  type Event,
  hungerOf,
  ledger,
  livingOf,
  type Model,
  type PlaceWeek,
  placeKey,
  placesBetween,
  simulate,
  stateIndex,
  timeline,
  water,
} from '@holdfast/ecosystem'
import { convert } from '@holdfast/quantities'
import type { Water } from './answer.ts'
import { type Band, bandOver } from './band.ts'
import { type Books, yearOf } from './books.ts'
import { homeOf } from './candidates.ts'
import type { Measured, Weekly } from './hands.ts'
import { middle } from './middle.ts'
import type { Present } from './question.ts'
import { withRoomFor } from './with-room-for.ts'

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
  readonly held: readonly (Measured & { readonly key: string })[]
  /** At the end of each month of thirty days. */
  readonly water: readonly Water[]
  /** Growth in the second half of a lean year, g dry d⁻¹, by the key of the place. */
  readonly lean: ReadonlyMap<string, number>
  readonly crew: readonly Fate[]
  /** Of the whole year. */
  readonly books: Books
  /** Algae that all of a taxon eat in the second half of a lean year, g dry d⁻¹. */
  readonly eatenWhenLean_g_d: ReadonlyMap<string, number>
  /** The water before each arrival: the states of every world, by the day. */
  readonly arrivals: ReadonlyMap<number, readonly Float64Array[]>
  readonly model: Model
}

/** What becomes of the animals of a taxon within a year. */
export interface Fate {
  readonly taxon: string
  /** Most of its reserve that it has used up, 0 to 1; from a half on animals begin to be lost to hunger. */
  readonly hunger: number
  /** The same at the end of each month of thirty days. */
  readonly months: readonly number[]
  readonly livingAfterYear: number
  /** Algae that all of them eat three months on, g dry d⁻¹. */
  readonly eats_g_d: number
  /** The same with their intervals. */
  readonly bands: Readonly<Record<'hunger' | 'livingAfterYear' | 'eats_g_d', Band>>
}

/** Reserve used up from which animals are lost to hunger, as in the model. */
export const starving = 0.5

const held = 90
const year = 365

/**
 * Lets a crew live in the model, with the hand at its side: three months to see what is held, a year to see who
 * starves.
 *
 * @param hands  what is taken off each week
 * @param home  vessel in which those that come live and eat
 */
export function trialRun(
  present: Present,
  changes: readonly Change[],
  hands: readonly Weekly[] = [],
  home = homeOf(present.model.system).id,
): TrialRun {
  const { day, worlds, routine } = present
  const system = withRoomFor(
    present.model.system,
    changes.map(({ taxon }) => taxon),
    home,
  )
  const model = assemble(system, present.model.facts)
  const to = day + year + 1
  const events = [...changes.map(eventOf), ...hands.flatMap((weekly) => removals(weekly, day, to))]
  const arrivals = timeline({
    system: { ...system, equipment: [] },
    facts: model.facts,
    events,
    from: day,
    to,
    asOf: day,
  })
  const moments = [...routine(to), ...arrivals].sort((a, b) => a.day - b.day)
  const months = Array.from({ length: 12 }, (_, k) => day + 30 + 30 * k)
  const come = changes.filter(({ count }) => count > 0).map(({ day: on }) => on)
  const days = [...new Set([...months, ...come])].sort((a, b) => a - b)
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
      marks: [day, day + held - 7, day + held, day + 180, day + year],
    })
    return {
      held: placesBetween(model, carried, marks[1], marks[2]),
      lean: placesBetween(model, carried, marks[3], marks[4]),
      ledger: ledger(model, marks[0], marks[4]),
      samples,
    }
  })
  type Run = (typeof runs)[number]
  const median = (of: (run: Run) => number): number => middle(present, (w) => of(runs[w]))
  const over = bandOver(present)
  const band = (of: (run: Run) => number): Band => over((w) => of(runs[w]))
  const eaten = (places: readonly PlaceWeek[], taxon: string): number =>
    places.reduce((sum, { grazed_g_d }) => sum + (grazed_g_d.get(taxon) ?? 0), 0)
  const booksOf = (atom: keyof Books): Books[keyof Books] => {
    const each = runs.map((run) => yearOf(run.ledger, atom))
    const streams = [...new Set(each.flatMap((books) => [...books.keys()]))]
    return new Map(
      streams.map((stream) => [stream, middle(present, (w) => each[w].get(stream) ?? 0)] as const),
    )
  }
  return {
    books: { N: booksOf('N'), P: booksOf('P') },
    held: runs[0].held.map((place, p) => ({
      ...place,
      key: placeKey(place),
      mass_g: median((run) => run.held[p].mass_g),
      mass_band_g: band((run) => run.held[p].mass_g),
      cover: median((run) => run.held[p].cover),
      height_mm: median((run) => run.held[p].height_mm),
      growth_g_d: median((run) => run.held[p].growth_g_d),
    })),
    lean: new Map(
      runs[0].lean.map((place, p) => [placeKey(place), median((run) => Math.max(0, run.lean[p].growth_g_d))]),
    ),
    crew: crewOf(system, model.facts).map(({ taxon }) => {
      const hunger = stateIndex(model, hungerOf(taxon).id)
      const living = stateIndex(model, livingOf(taxon).id)
      const bands = {
        hunger: band(({ samples }) => Math.max(...samples.map((states) => states[hunger]))),
        livingAfterYear: band(({ samples }) => samples[samples.length - 1][living]),
        eats_g_d: band((run) => eaten(run.held, taxon)),
      }
      return {
        taxon,
        hunger: bands.hunger.value,
        months: months.map((on) => median(({ samples }) => samples[days.indexOf(on)][hunger])),
        livingAfterYear: bands.livingAfterYear.value,
        eats_g_d: bands.eats_g_d.value,
        bands,
      }
    }),
    eatenWhenLean_g_d: new Map(
      crewOf(system, model.facts).map(({ taxon }) => [taxon, median((run) => eaten(run.lean, taxon))]),
    ),
    water: months.map((on) => {
      const inWater = (
        of: 'nitrate' | 'phosphate',
        atom: string,
        unit: Parameters<typeof convert>[2],
      ): Band =>
        band(({ samples }) =>
          convert(
            samples[days.indexOf(on)][stateIndex(model, `${water[of].id}/${atom}`)] / model.volume_L,
            'µmol L⁻¹',
            unit,
          ),
        )
      const bands = {
        nitrate_mg_L: inWater('nitrate', 'N', 'mg NO3 L⁻¹'),
        phosphate_mg_L: inWater('phosphate', 'P', 'mg PO4 L⁻¹'),
      }
      return {
        nitrate_mg_L: bands.nitrate_mg_L.value,
        phosphate_mg_L: bands.phosphate_mg_L.value,
        bands,
      }
    }),
    arrivals: new Map(come.map((on) => [on, runs.map(({ samples }) => samples[days.indexOf(on)])])),
    model,
  }
}

const eventOf = ({ day, taxon, count }: Change): Event =>
  count > 0
    ? { day, kind: 'animals added', taxon, count }
    : { day, kind: 'animals lost', taxon, count: -count, bodyTakenOut: true }

/** Once a week from the seventh day on, until a day. */
const removals = ({ surface, kind, share }: Weekly, from: number, to: number): readonly Event[] =>
  Array.from({ length: Math.floor((to - from) / 7) }, (_, week) => ({
    day: from + 7 * (week + 1),
    kind: 'hand removal' as const,
    surface,
    algae: kind,
    share,
    leftToDrift: false,
  }))
