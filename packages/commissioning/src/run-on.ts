import { type Day, type Event, type Model, type Moment, simulate, timeline } from '@holdfast/ecosystem'
import type { Member, OutlookQuestion, Past } from '@holdfast/inference'
import type { Dissolved } from './answer.ts'

/** A member of the ensemble on a day. */
export interface World extends Pick<Member, 'parameters' | 'states' | 'settings'> {
  readonly day: Day
}

export interface RunOn {
  readonly model: Model
  /** What a kit would read of a state. */
  readonly read: (quantity: Dissolved, world: World) => number
  /** The worlds at the end of each of so many days of the usual husbandry, after something is done on the first. */
  readonly days: (world: World, count: number, done?: readonly Event[]) => readonly World[]
  /** The same in the dark with nothing fed and no change of water, which shows what rock gives off. */
  readonly darkDays: (world: World, count: number, done: readonly Event[]) => World
}

export function runOn({ model, seen }: Past, question: OutlookQuestion): RunOn {
  const { system, facts } = model
  const moments = (from: Day, to: Day, events: readonly Event[], still: boolean): readonly Moment[] =>
    timeline({
      ...question,
      facts,
      system: still
        ? { ...system, equipment: system.equipment.filter(({ kind }) => !renews.has(kind)) }
        : system,
      events,
      from,
      to,
      ...(still ? { change: { from, feedFactor: 0, carbonFactor: 0 } } : {}),
    })
  const run = (
    { day: from, states, parameters, settings }: World,
    count: number,
    events: readonly Event[],
    still = false,
  ): readonly World[] => {
    const days = Array.from({ length: count }, (_, at) => from + at + 1)
    const to = from + count
    const ran = simulate({
      model,
      parameters,
      start: states,
      settings,
      from,
      to,
      samples: days,
      timeline: moments(from, to, events, still),
    })
    return days.map((day, at) => ({ day, parameters, states: ran.samples[at], settings: ran.settings }))
  }
  const reads = new Map(seen.map((one) => [one.quantity, one.of]))
  return {
    model,
    read: (quantity, { states, parameters }) => reads.get(quantity)?.(states, parameters) ?? Number.NaN,
    days: (world, count, done = []) => run(world, count, [...question.events, ...done]),
    darkDays: (world, count, done) =>
      run(world, count, [{ day: world.day, kind: 'light change', light_h_per_day: 0 }, ...done], true)[
        count - 1
      ],
  }
}

/** Equipment that renews water. */
const renews = new Set<string>(['water change', 'continuous water change'])
