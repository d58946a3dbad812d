import type { Model } from '../assemble/model.ts'
import {
  Integrator,
  type IntegratorSettings,
  type Statistics,
  usualSettings,
  type Watch,
} from '../integrate/index.ts'
import type { Day } from '../log.ts'
import { changeSettings, slotsOf } from './change-settings.ts'
import { happenings } from './happen.ts'
import { type Mark, Marks } from './marks.ts'
import { kernelOf } from './model-kernel.ts'
import { changedBy, type Moment } from './moment.ts'
import { movedRatesOf } from './moved-rates.ts'
import { Samples } from './samples.ts'

/** What the members of a run have in common. */
export interface RunQuestion {
  readonly model: Model
  readonly from: Day
  readonly to: Day
  readonly timeline: readonly Moment[]
  /** Days at which the states are wanted, in order. */
  readonly samples?: readonly Day[]
  /** Days at which the sums of flows are wanted, in order; no step is cut for them. */
  readonly marks?: readonly Day[]
  /** Settings other than those of the system, such as from an earlier run. */
  readonly settings?: Float64Array
  readonly integrator?: IntegratorSettings
}

/** What one member runs with. */
export interface MemberRun {
  readonly parameters: Float64Array
  /** States at the start; left as they are. */
  readonly start: Float64Array
}

export type SimulationQuestion = RunQuestion & MemberRun

/** What became of one member. Accounts outside are told where marks are asked for, else they stay as at the start. */
export interface Simulation {
  readonly samples: readonly Float64Array[]
  readonly marks: readonly Mark[]
  readonly end: Float64Array
  readonly settings: Float64Array
  readonly statistics: Statistics
}

/** Runs a model over a span, through its events. A sample on the day of an event is taken before it. */
export function simulate(question: SimulationQuestion): Simulation {
  return simulateTogether(question, [question])[0]
}

/** Runs members of one husbandry, two side by side: each has the bits that it would have alone. */
export function simulateTogether(
  question: RunQuestion,
  members: readonly MemberRun[],
): readonly Simulation[] {
  return pairs(members).flatMap((pair) => runPair(question, pair))
}

/** A list in twos, the last alone where their number is odd. */
export const pairs = <T>(list: readonly T[]): readonly (readonly T[])[] =>
  Array.from({ length: Math.ceil(list.length / 2) }, (_, pair) => list.slice(2 * pair, 2 * pair + 2))

function runPair(question: RunQuestion, members: readonly MemberRun[]): readonly Simulation[] {
  const { model, from, to } = question
  const compiled = kernelOf(model)
  const { kernel } = compiled
  const { memory } = kernel
  compiled.owner = question
  const settings = Float64Array.from(question.settings ?? model.settings.values)
  for (const member of [0, 1] as const) {
    const { parameters, start } = members[member] ?? members[0]
    compiled.setParameters(member, parameters)
    memory.set(memory.at.start, member, start)
  }
  compiled.setSettings(settings)
  const markDays = question.marks ?? []
  const integrator = new Integrator(kernel, markDays.length > 0, question.integrator ?? usualSettings)
  const eventFlows = members.map(() => new Float64Array(model.eventFluxes.length))
  const samples = new Samples(kernel, members.length, question.samples ?? [])
  const marks = new Marks(kernel, eventFlows, markDays)
  const happen = happenings(model, compiled, eventFlows, markDays.length > 0)
  const slots = slotsOf(model)

  const watching: readonly Watch[] = markDays.length > 0 ? [samples, marks] : [samples]
  const watch: Watch = {
    begin: () => {
      for (const one of watching) one.begin()
    },
    short: (spans) => {
      for (const one of watching) one.short(spans)
    },
    long: (spans) => {
      for (const one of watching) one.long(spans)
    },
  }
  const moved = movedRatesOf(model)
  // Whether slow rates at the start are known, from the run before.
  let known = false
  let happened: string[] = []
  const advance = (start: Day, until: Day): void => {
    integrator.run(start, until, members.length === 2 ? 2 : 1, watch, { after: happened.join(), known })
    known = true
    happened = []
  }
  const occur = (moments: readonly Moment[]): void => {
    const some = known ? moved.by(moments) : undefined
    for (const index of some ?? []) kernel.run.leaveOut(index)
    for (const moment of moments) {
      happened.push(`${'happens' in moment ? moment.happens : ''} ${changedBy(moment).join()}`)
      if ('happens' in moment) happen(moment)
      else {
        changeSettings(settings, slots, moment)
        compiled.changeSettings(settings)
      }
    }
    for (const index of some ?? []) kernel.run.putIn(index)
    known = some !== undefined
  }
  let day = from
  samples.upTo(day)
  marks.upTo(day)
  for (const moments of byDay(question.timeline)) {
    const next = moments[0].day
    if (next >= to) break
    if (day < next) advance(day, next)
    day = Math.max(day, next)
    occur(moments)
  }
  if (day < to) advance(day, to)
  samples.upTo(to)
  marks.upTo(to)
  const taken = samples.take()
  return members.map((_, member) => ({
    samples: taken[member],
    marks: marks.of(member),
    end: memory.get(memory.at.start, member),
    settings: Float64Array.from(settings),
    statistics: integrator.lanes[member].statistics,
  }))
}

/** Moments one after the other, those of one day together. */
function byDay(timeline: readonly Moment[]): readonly (readonly Moment[])[] {
  const days: Moment[][] = []
  for (const moment of timeline) {
    const last = days.at(-1)
    if (last && last[0].day === moment.day) last.push(moment)
    else days.push([moment])
  }
  return days
}
