import {
  assemble,
  carriedOver,
  type Day,
  type Event,
  type Model,
  simulate,
  stateIndex,
  timeline,
  type World as WorldOfModel,
} from '@holdfast/ecosystem'
import type { OutlookQuestion, Past } from '@holdfast/inference'
import { convert } from '@holdfast/quantities'
import type { Dissolved } from './answer.ts'

/** A member of the ensemble on a day. */
export interface World extends WorldOfModel {
  readonly day: Day
}

/** Members of an ensemble, and what is done to them from today on. */
export interface RunOn {
  readonly model: Model
  /** The members today. */
  readonly worlds: readonly World[]
  /** What a kit reads, in the unit of readings. */
  readonly read: (quantity: Dissolved, world: World) => number
  /** The ends of so many days of the usual husbandry, after something is done on the first. */
  readonly days: (world: World, count: number, done?: readonly Event[]) => readonly World[]
  /** The end of so many dark days with nothing fed, bound or changed, which show what rock gives off. */
  readonly darkDays: (world: World, count: number, done: readonly Event[]) => World
}

/** The members of an ensemble in a system that has a place for ferric media, which cure rock with the water changes. */
export function runOn(known: Past, question: OutlookQuestion): RunOn {
  const model = withReactor(known.model)
  const { system, facts } = model
  const still = { ...system, equipment: system.equipment.filter(({ kind }) => !renews.has(kind)) }
  const run = (world: World, count: number, events: readonly Event[], dark: boolean): readonly World[] => {
    const { day: from, parameters, states, settings } = world
    const to = from + count
    const days = Array.from({ length: count }, (_, at) => from + at + 1)
    const moments = timeline({
      system: dark ? still : system,
      facts,
      asOf: question.asOf,
      events,
      from,
      to,
      ...(dark ? { change: { from, feedFactor: 0, carbonFactor: 0 } } : {}),
    })
    const ran = simulate({
      model,
      parameters,
      start: states,
      settings,
      from,
      to,
      samples: days,
      timeline: moments,
    })
    return days.map((day, at) => ({ day, parameters, states: ran.samples[at], settings: ran.settings }))
  }
  return {
    model,
    worlds: known.members.map((member) => ({
      ...carriedOver(known.model, member, model),
      day: question.asOf,
    })),
    read: readIn(model),
    days: (world, count, done = []) => run(world, count, [...question.events, ...done], false),
    darkDays: (world, count, done) => {
      const { day } = world
      const dark: readonly Event[] = [
        { day, kind: 'light change', light_h_per_day: 0 },
        { day, kind: 'media removed' },
      ]
      return run(world, count, [...dark, ...done], true)[count - 1]
    },
  }
}

/** Equipment that renews water. */
const renews = new Set<string>(['water change', 'continuous water change'])

function withReactor(model: Model): Model {
  const { system, facts } = model
  if (system.equipment.some(({ kind }) => kind === 'ferric media reactor')) return model
  const empty = { kind: 'ferric media reactor', mass_g: 0 } as const
  return assemble({ ...system, equipment: [...system.equipment, empty] }, facts)
}

function readIn(model: Model): RunOn['read'] {
  const dissolved = (id: string, unit: string) => {
    const index = stateIndex(model, id)
    const factor = convert(1, 'µmol L⁻¹', unit) / model.volume_L
    return ({ states }: World): number => states[index] * factor
  }
  const reads: Readonly<Record<Dissolved, (world: World) => number>> = {
    ammonia: dissolved('water.ammonia/N', 'mg N L⁻¹'),
    nitrite: dissolved('water.nitrite/N', 'mg NO2 L⁻¹'),
    nitrate: dissolved('water.nitrate/N', 'mg NO3 L⁻¹'),
    phosphate: dissolved('water.phosphate/P', 'mg PO4 L⁻¹'),
  }
  return (quantity, world) => reads[quantity](world)
}
